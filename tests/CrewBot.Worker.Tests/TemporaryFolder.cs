namespace CrewBot.Worker.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("crewbot-").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public string Write(string name, string content)
    {
        System.IO.File.WriteAllText(File(name), content);
        return File(name);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
