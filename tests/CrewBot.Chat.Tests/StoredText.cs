namespace CrewBot.Chat.Tests;

/// <summary>A text kept in the repository: compared, or written anew when asked to.</summary>
/// <remarks>Set <c>CREWBOT_WRITE_EXPECTED=1</c> for one run, and read the difference before it is committed.</remarks>
internal static class StoredText
{
    private const string Switch = "CREWBOT_WRITE_EXPECTED";

    private static readonly string Root = FindRoot();

    /// <summary>Asserts that a file of the repository holds just this text.</summary>
    public static async Task AssertAsync(string path, string text)
    {
        var file = Path.Combine(Root, path);
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            await File.WriteAllTextAsync(file, text, TestContext.Current.CancellationToken);
        }

        Assert.True(File.Exists(file), $"{path} is missing: run the tests once with {Switch}=1.");
        Assert.Equal(await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), text, ignoreLineEndingDifferences: true);
    }

    /// <summary>A file of the repository.</summary>
    public static Task<string> ReadAsync(string path) => File.ReadAllTextAsync(Path.Combine(Root, path), TestContext.Current.CancellationToken);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CrewBot.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside their repository.");
    }
}
