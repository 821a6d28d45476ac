using System.Runtime.CompilerServices;
using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Tests.Configuration;

/// <summary>The ready configurations are read as a start reads them.</summary>
public sealed class ConfigExamplesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Examples =>
        [.. Directory.EnumerateFiles(Folder(), "*.json").Select(file => Path.GetFileName(file)).Where(name => name != "knowledge-overlay.json").Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Read_Example_HasNoFault(string name)
    {
        var file = _folder.Write(name, File.ReadAllText(Path.Combine(Folder(), name)));
        _folder.Write("discord-token", "MTAxMjM0NTY3ODkwMTIzNDU2.Gabcde.example-marker-token-0123456789abcdef");

        var reading = SettingsReader.Read(file, new Dictionary<string, string>());

        Assert.Empty(reading.Faults);
        Assert.NotNull(reading.Settings);
    }

    [Fact]
    public void Read_HomeBoard_KeepsEverythingBesideItsFile()
    {
        var file = _folder.Write("home-board.json", File.ReadAllText(Path.Combine(Folder(), "home-board.json")));
        _folder.Write("discord-token", "MTAxMjM0NTY3ODkwMTIzNDU2.Gabcde.example-marker-token-0123456789abcdef");

        var settings = SettingsReader.Read(file, new Dictionary<string, string>()).Settings!;

        Assert.Equal((_folder.File("data/crew.db"), _folder.File("data/photos"), 2000), (settings.Database, settings.PhotoFolder, settings.PhotoMegabytes));
    }

    [Theory]
    [InlineData("CREWBOT_PHOTOMEGABYTES", "0", "CrewBot:PhotoMegabytes is '0': write a whole number from 1 to 1000000.")]
    [InlineData("CREWBOT_PHOTOFOLDER", " ", "CrewBot:PhotoFolder is ' ': write the path of a folder, or leave the key out.")]
    public void Read_WrongPhotoSetting_NamesKeyValueAndRemedy(string name, string value, string line) =>
        Assert.Equal([line], SettingsReader.Read(null, new Dictionary<string, string> { [name] = value }).Faults);

    public void Dispose() => _folder.Dispose();

    private static string Folder([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../../config-examples"));
}
