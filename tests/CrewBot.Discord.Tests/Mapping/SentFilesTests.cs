using System.Net;
using CrewBot.Chat.Commands;
using CrewBot.Discord.Mapping;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class SentFilesTests
{
    private static readonly Uri Api = new("https://discord.com/api/v10/");

    [Fact]
    public async Task ReadAsync_FileOfThePlatform_IsTakenWhole()
    {
        var reading = await ReadAsync("https://cdn.discordapp.com/attachments/1/2/catches.csv?ex=1", HttpStatusCode.OK);

        Assert.Null(reading.Fault);
        Assert.Equal("species"u8, reading.Value.Span);
    }

    [Theory]
    [InlineData("https://files.example/catches.csv")]
    [InlineData("http://cdn.discordapp.com/catches.csv")]
    [InlineData("https://cdn.discordapp.com.files.example/catches.csv")]
    [InlineData("http://127.0.0.1/catches.csv")]
    [InlineData("file:///etc/hostname")]
    public async Task ReadAsync_AnywhereElse_IsNotAsked(string address) =>
        Assert.Contains("attach the file itself", (await ReadAsync(address, HttpStatusCode.OK)).Fault, StringComparison.Ordinal);

    [Fact]
    public async Task ReadAsync_GoneTooLargeOrUnreachable_IsRefusedInALine()
    {
        const string File = "https://cdn.discordapp.com/attachments/1/2/catches.csv";

        Assert.Contains("attach it again", (await ReadAsync(File, HttpStatusCode.NotFound)).Fault, StringComparison.Ordinal);
        Assert.Contains("larger than", (await ReadAsync(File, HttpStatusCode.OK, most: 6)).Fault, StringComparison.Ordinal);
        Assert.Contains("try again", (await ReadAsync(File, status: null)).Fault, StringComparison.Ordinal);
    }

    private static async Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(string address, HttpStatusCode? status, int most = 7)
    {
        using var http = new HttpClient(new OneAnswer(status));
        return await new SentFiles(http, Api).ReadAsync(new Attachment(new Uri(address), "catches.csv"), most, TestContext.Current.CancellationToken);
    }

    private sealed class OneAnswer(HttpStatusCode? status) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            status is { } answered
                ? Task.FromResult(new HttpResponseMessage(answered) { Content = new ByteArrayContent("species"u8.ToArray()) })
                : throw new HttpRequestException("no network");
    }
}
