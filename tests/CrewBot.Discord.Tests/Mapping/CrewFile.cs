namespace CrewBot.Discord.Tests.Mapping;

/// <summary>Where a crew's database lies while a test runs, across restarts of the room.</summary>
internal sealed class CrewFile : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");

    public string Path => System.IO.Path.Combine(_folder.FullName, "crew.db");

    public void Dispose() => _folder.Delete(recursive: true);
}
