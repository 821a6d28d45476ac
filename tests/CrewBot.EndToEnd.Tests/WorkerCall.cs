namespace CrewBot.EndToEnd.Tests;

/// <summary>How the program is started.</summary>
internal sealed record WorkerCall
{
    public IReadOnlyList<string> Arguments { get; init; } = [];

    /// <summary>What is piped into it.</summary>
    public string Input { get; init; } = "";

    public IReadOnlyDictionary<string, string> Environment { get; init; } = new Dictionary<string, string>();
}
