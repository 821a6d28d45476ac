using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Tests.Configuration;

public sealed class DiscordSettingsReaderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_NoToken_JoinsNothing()
    {
        Assert.Null(Read(("CREWBOT_DISCORD__TESTGUILD", "5")).Settings!.Discord);
    }

    [Fact]
    public void Read_Token_IsTakenAndNeverShown()
    {
        var discord = Read(("CREWBOT_DISCORD__TOKEN", " hush.hush.hush ")).Settings!.Discord!;

        Assert.Equal(new Uri("https://discord.com/api/v10/"), discord.ApiBaseAddress);
        Assert.DoesNotContain("hush", discord.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_TokenFile_IsRelativeToTheConfiguration()
    {
        _folder.Write("token", "hush.hush.hush\n");
        var file = _folder.Write("crew.json", """{ "CrewBot": { "Discord": { "TokenFile": "token" } } }""");

        Assert.True(SettingsReader.Read(file, new Dictionary<string, string>()).Settings!.Discord!.Token.HasUsualShape);
    }

    [Fact]
    public void Read_Shards_AreTaken()
    {
        var discord = Read(
            ("CREWBOT_DISCORD__TOKEN", "t"), ("CREWBOT_DISCORD__SHARDCOUNT", "4"), ("CREWBOT_DISCORD__SHARDIDS", "1, 3"))
            .Settings!.Discord!;

        Assert.Equal(4, discord.ShardCount);
        Assert.Equal([1, 3], discord.ShardIds!);
    }

    [Theory]
    [InlineData("TOKEN", "two\nlines")]
    [InlineData("TOKEN", " ")]
    [InlineData("TOKENFILE", "gone")]
    [InlineData("APIBASEADDRESS", "discord")]
    [InlineData("APIBASEADDRESS", "ftp://discord.com/")]
    [InlineData("TESTGUILD", "Loon Basin")]
    [InlineData("SHARDCOUNT", "0")]
    [InlineData("SHARDCOUNT", "many")]
    [InlineData("SHARDIDS", "0")]
    [InlineData("SHARDIDS", "")]
    public void Read_WrongValue_NamesTheKeyInOneLine(string key, string value)
    {
        var fault = Assert.Single(Read(("CREWBOT_DISCORD__" + key, value)).Faults);

        Assert.StartsWith("CrewBot:Discord:", fault, StringComparison.Ordinal);
        Assert.Contains(key, fault, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('\n', fault);
    }

    [Fact]
    public void Read_TokenAndTokenFile_AsksToKeepOne()
    {
        var fault = Assert.Single(Read(("CREWBOT_DISCORD__TOKEN", "hush"), ("CREWBOT_DISCORD__TOKENFILE", "f")).Faults);

        Assert.Contains("keep one", fault, StringComparison.Ordinal);
        Assert.DoesNotContain("hush", fault, StringComparison.Ordinal);
    }

    private static SettingsReading Read(params (string Name, string Value)[] variables) =>
        SettingsReader.Read(null, variables.ToDictionary(variable => variable.Name, variable => variable.Value));
}
