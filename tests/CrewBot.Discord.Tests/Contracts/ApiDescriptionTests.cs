using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Contracts;

/// <summary>The check itself must be able to fail.</summary>
public sealed class ApiDescriptionTests
{
    [Theory]
    [InlineData("""{"embeds":[{"title":"Walleye rig"}],"allowed_mentions":{"parse":[]},"nonce":"a","enforce_nonce":true}""", true)]
    [InlineData("""{"nonce":"this nonce is longer than 25 characters"}""", false)]
    [InlineData("""{"embeds":"none"}""", false)]
    public void Check_MessageBody_IsJudgedByThePublishedDescription(string body, bool fits)
    {
        var description = ApiDescription.OrSkip();
        var request = new RecordedRequest(
            "POST", "channels/1/messages", new Dictionary<string, string>(), JsonNode.Parse(body), [], 0);

        var fault = Record.Exception(() => description.Check(request));

        Assert.Equal(fits, fault is null);
    }
}
