namespace CrewBot.Storage.Trips;

/// <summary>Something that somebody brings.</summary>
/// <param name="Number">Its number within the trip.</param>
/// <param name="MemberId">Who brings it.</param>
/// <param name="Kind">The key of a kind that the trade knows; for a crew's own gear, what it is called.</param>
/// <param name="Count">How many.</param>
public sealed record TripItem(int Number, long MemberId, string Kind, int Count)
{
    /// <summary>For a crew's own gear: what it is there for, in the word of the trade's file; null for a known kind.</summary>
    public string? Family { get; init; }

    /// <summary>For a crew's own gear: its seats.</summary>
    public int Seats { get; init; }

    /// <summary>For a crew's own gear: its mass in whole nanograms.</summary>
    public long MassNanograms { get; init; }
}
