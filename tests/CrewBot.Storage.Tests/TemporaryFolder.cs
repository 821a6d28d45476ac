namespace CrewBot.Storage.Tests;

/// <summary>A folder of real files that goes away with the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");

    public string File(string name = "crew.db") => Path.Combine(_folder.FullName, name);

    public void Dispose() => _folder.Delete(recursive: true);
}
