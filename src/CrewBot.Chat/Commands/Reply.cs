using System.Text.Json.Serialization;

namespace CrewBot.Chat.Commands;

/// <summary>An answer as data. Platforms render it; <c>--json</c> prints it as it is.</summary>
public sealed record Reply
{
    /// <summary>The answer in one line; empty for a refusal.</summary>
    public string Headline { get; init; } = "";

    /// <summary>What a phone shows: at most eight.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>What was said here before and no longer holds: shown first, struck through.</summary>
    public IReadOnlyList<string> Struck
    {
        get => field ?? []; // an answer that was kept before anything was struck has none
        init;
    }

    /// <summary>Every number in the reply.</summary>
    public IReadOnlyList<Figure> Figures { get; init; } = [];

    /// <summary>Why, and how the numbers came about: behind a button on platforms.</summary>
    public IReadOnlyList<string> Reasons { get; init; } = [];

    /// <summary>What to beware of, each with what set it off.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    public IReadOnlyList<Picture> Pictures { get; init; } = [];

    /// <summary>What a person takes away as a file.</summary>
    public IReadOnlyList<ReplyFile> Files
    {
        get => field ?? []; // an answer that was kept before there were files has none
        init;
    }

    public IReadOnlyList<ReplyAction> Actions { get; init; } = [];

    /// <summary>Lists to choose from, below the buttons: at most three.</summary>
    public IReadOnlyList<ReplyChoice> Choices
    {
        get => field ?? []; // an answer that was kept before there were lists has none
        init;
    }

    public Audience Audience { get; init; }

    /// <summary>The platform's role that is called when this is posted, so that its people's devices ring; null for none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Calls { get; init; }

    /// <summary>Why there is no answer, in one line; null when there is one.</summary>
    public string? Problem { get; init; }

    /// <summary>Refuses in one line.</summary>
    public static Reply Refuse(string problem) => new() { Problem = problem };
}
