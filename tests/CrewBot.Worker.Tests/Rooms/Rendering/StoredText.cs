namespace CrewBot.Worker.Tests.Rooms.Rendering;

/// <summary>Compares text to a stored file; what came instead is left beside it for whoever reviews the change.</summary>
internal static class StoredText
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Rooms", "Rendering", "Expected");

    public static void AssertSame(string file, string actual)
    {
        var path = Path.Combine(Folder, file);
        var expected = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        if (expected != actual)
        {
            Directory.CreateDirectory(Folder);
            File.WriteAllText(Path.ChangeExtension(path, ".received.txt"), actual);
        }

        Assert.Equal(expected, actual);
    }
}
