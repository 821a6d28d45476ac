namespace CrewBot.EndToEnd.Tests;

/// <summary>What came of a run.</summary>
internal sealed record WorkerRun(int ExitCode, string Output, string Error)
{
    public IReadOnlyList<string> ErrorLines => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
