using CrewBot.Chat.Commands;
using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Tests.Configuration;

public sealed class SettingsReaderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public void Read_NothingGiven_GivesTheDefaults()
    {
        var settings = SettingsReader.Read(null, Variables()).Settings;

        Assert.Equal(new Settings { Units = CrewUnits.Customary, KnowledgeFile = null }, settings);
    }

    [Fact]
    public void Read_FileAndVariable_TheVariableHasTheLastWord()
    {
        var file = _folder.Write("crew.json", """{ "CrewBot": { "Units": "metric" } }""");

        Assert.Equal(CrewUnits.Metric, SettingsReader.Read(file, Variables()).Settings!.Units);
        Assert.Equal(CrewUnits.Customary, SettingsReader.Read(file, Variables(("CREWBOT_UNITS", "Customary"))).Settings!.Units);
    }

    [Fact]
    public void Read_KnowledgeFileInAFile_IsRelativeToIt()
    {
        var overlay = _folder.Write("ours.json", "{}");
        var file = _folder.Write("crew.json", """{ "CrewBot": { "KnowledgeFile": "ours.json" } }""");

        Assert.Equal(overlay, SettingsReader.Read(file, Variables()).Settings!.KnowledgeFile);
    }

    [Fact]
    public void Read_KnowledgeFileThatIsNotThere_NamesKeyValueAndRemedy()
    {
        var file = _folder.Write("crew.json", """{ "CrewBot": { "KnowledgeFile": "gone.json" } }""");

        Assert.Equal(
            "CrewBot:KnowledgeFile is 'gone.json': there is no such file; write a path relative to the configuration file.",
            FaultOf(file));
    }

    [Fact]
    public void Read_UnknownKey_DoesNotRepeatWhatMayBeASecret()
    {
        var fault = Assert.Single(SettingsReader.Read(null, Variables(("CREWBOT_DISCORD__TOKN", "hush"))).Faults);

        Assert.StartsWith("CrewBot:DISCORD:TOKN: there is no such key", fault, StringComparison.Ordinal);
        Assert.DoesNotContain("hush", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"CrewBot\": {\n \"Units\" \"metric\" } }", "not JSON at line 2")]
    [InlineData("[]", "not a JSON object")]
    public void Read_FileIsNotSettings_NamesTheFileAndTheRemedy(string content, string remedy)
    {
        var file = _folder.Write("crew.json", content);

        var fault = FaultOf(file);

        Assert.StartsWith(file, fault, StringComparison.Ordinal);
        Assert.Contains(remedy, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FileIsMissing_SaysSo() =>
        Assert.EndsWith("there is no such file; write the path of one.", FaultOf(_folder.File("gone.json")), StringComparison.Ordinal);

    [Fact]
    public void Read_FolderForAFile_SaysItCannotBeRead() =>
        Assert.Matches("it can't be read|there is no such file", FaultOf(_folder.Path));

    public void Dispose() => _folder.Dispose();

    private static string FaultOf(string file) => Assert.Single(SettingsReader.Read(file, Variables()).Faults);

    private static Dictionary<string, string> Variables(params (string Name, string Value)[] variables) =>
        variables.ToDictionary(variable => variable.Name, variable => variable.Value);
}
