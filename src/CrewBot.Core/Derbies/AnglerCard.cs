namespace CrewBot.Core.Derbies;

/// <summary>An angler's part of a scoreboard.</summary>
internal sealed class AnglerCard
{
    /// <summary>The entries' numbers.</summary>
    public List<int> Entries { get; private init; } = [];

    public string? Team { get; set; }

    public bool HasLeft { get; set; }

    /// <summary>The fish that count and those that do not; null since something changed.</summary>
    public (IReadOnlyList<ScoredFish> Counting, IReadOnlyList<OutEntry> Out)? Bag { get; set; }

    /// <summary>A card of its own that says the same.</summary>
    public AnglerCard Copy() => new() { Entries = [.. Entries], Team = Team, HasLeft = HasLeft, Bag = Bag };
}
