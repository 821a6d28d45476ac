using System.Net;
using System.Net.Http.Json;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>Standard clients say in a query whether they want the message back: their answer is one all the same.</summary>
public sealed class StandInCallbackTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Answer_WithAQuery_IsAccepted(bool records)
    {
        await using var server = await StandInServer.StartAsync();
        server.Settings.Records = records;
        var accepted = new List<string>();
        server.OnAccepted = accepted.Add;
        using var http = new HttpClient { BaseAddress = server.ApiAddress };

        using var response = await http.PostAsJsonAsync("interactions/41/token/callback?with_response=false", new { type = 5 }, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NoContent, response.StatusCode);
        Assert.Equal("interactions/41/token/callback?with_response=false", Assert.Single(accepted));
    }
}
