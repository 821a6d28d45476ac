using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies;

/// <summary>What the ledger says of one entry at some instant.</summary>
public sealed record EntryState
{
    /// <summary>Its number within the derby.</summary>
    public required int Number { get; init; }

    public required long Angler { get; init; }

    /// <summary>Its number in the crew's log.</summary>
    public required long Catch { get; init; }

    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>As measured, before rounding.</summary>
    public required ExactLength Measured { get; init; }

    /// <summary>By the angler's clock.</summary>
    public required DateTimeOffset CaughtAt { get; init; }

    /// <summary>By the server's clock.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    public ExactMass? Weight { get; init; }

    /// <summary>Name of the water; null when nobody said.</summary>
    public string? Water { get; init; }

    /// <summary>Kept, or released; null when nobody said.</summary>
    public bool? Kept { get; init; }

    public bool HasPhoto { get; init; }

    /// <summary>Who says that they saw it; null for nobody yet.</summary>
    public long? Witness { get; init; }

    /// <summary>What a steward decided; null for nothing.</summary>
    public bool? Accepted { get; init; }

    /// <summary>Why it was protested, refused or penalised.</summary>
    public string? Reason { get; init; }

    /// <summary>Taken off its scored length, in nanometres.</summary>
    public long Penalty { get; init; }

    public bool IsDisputed { get; init; }

    public bool IsWithdrawn { get; init; }

    /// <summary>What a record says of its one entry.</summary>
    /// <param name="ledger">The events of one entry, in order.</param>
    /// <returns>Null when nothing was entered.</returns>
    public static EntryState? Of(IEnumerable<LedgerEvent> ledger) => ledger.Aggregate(
        (EntryState?)null, (entry, written) => written is Entered entered ? entered.ToState() : ((EntryEvent)written).Change(entry!));

    /// <summary>Is there what the derby asks for, so that no steward is needed?</summary>
    public bool IsProven(Evidence evidence) => evidence switch
    {
        Evidence.Crewmate => Witness is not null,
        Evidence.Photo => HasPhoto,
        _ => true,
    };
}
