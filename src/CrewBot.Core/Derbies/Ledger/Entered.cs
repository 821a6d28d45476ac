using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A fish of the crew's log was entered, as the log had it then.</summary>
public sealed record Entered(int Number, DateTimeOffset At, long By, int Entry, long Angler) : LedgerEvent(Number, At, By)
{
    /// <summary>Its number in the crew's log.</summary>
    public required long Catch { get; init; }

    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>As measured, before rounding.</summary>
    public required ExactLength Measured { get; init; }

    /// <summary>By the angler's clock.</summary>
    public required DateTimeOffset CaughtAt { get; init; }

    public ExactMass? Weight { get; init; }

    /// <summary>Name of the water; null when nobody said.</summary>
    public string? Water { get; init; }

    /// <summary>Kept, or released; null when nobody said.</summary>
    public bool? Kept { get; init; }

    public bool HasPhoto { get; init; }

    internal EntryState ToState() => new()
    {
        Number = Entry,
        Angler = Angler,
        Catch = Catch,
        Species = Species,
        Measured = Measured,
        CaughtAt = CaughtAt,
        ReceivedAt = At,
        Weight = Weight,
        Water = Water,
        Kept = Kept,
        HasPhoto = HasPhoto,
    };
}
