using CrewBot.Storage.Catches;

namespace CrewBot.Chat.CatchFiles;

/// <summary>A fish as a file carries it: people, waters and spots by name, so that it can go to another database.</summary>
internal sealed record FileCatch
{
    /// <summary>Its number within the crew; null where the crew shall give it one.</summary>
    public required long? Number { get; init; }

    /// <summary>The angler by the platform's id; null for a former angler, and where a file names people only.</summary>
    public required string? AnglerId { get; init; }

    public required string? Angler { get; init; }

    public required string? Water { get; init; }

    public required string? Spot { get; init; }

    /// <summary>Since when it no longer counts; null while it does.</summary>
    public required DateTimeOffset? VoidedAt { get; init; }

    /// <summary>The fish, without the database's own numbers of people and places.</summary>
    public required CatchEntry Entry { get; init; }

    public static FileCatch Of(LoggedCatch logged) => new()
    {
        Number = logged.Number,
        AnglerId = logged.AnglerId,
        Angler = logged.Angler,
        Water = logged.Water,
        Spot = logged.Spot,
        VoidedAt = logged.VoidedAt,
        Entry = logged.Entry with { MemberId = 0, WaterId = null, SpotId = null },
    };
}
