using UnitsNet;

namespace CrewBot.Core.Effort;

/// <summary>A crew's fishing: spells of lines in the water, and the fish that each of them took.</summary>
/// <remarks>
/// A rate holds only if its fish came in its hours. So a fish belongs to the spell in which its angler had lines down, with
/// the presentation that took it: of several such spells, the one let down last. Hours and fish then take mood and depth
/// from the spell alike; the time of day splits a spell's hours exactly. A fish that no spell can have taken is counted
/// apart and in no rate.
/// </remarks>
public sealed class EffortLog
{
    private readonly IReadOnlyList<FishedSpell> _spells;
    private readonly ILookup<int, CaughtFish> _fishOfSpell;

    /// <param name="spells">In any order.</param>
    /// <param name="fish">In any order.</param>
    public EffortLog(IReadOnlyList<FishedSpell> spells, IReadOnlyList<CaughtFish> fish)
    {
        _spells = spells;
        var anglers = spells
            .Select((spell, index) => (spell, index))
            .GroupBy(pair => pair.spell.Angler)
            .ToDictionary(own => own.Key, own => new AnglerSpells(own));
        var placed = fish
            .Select(caught => (caught, Spell: anglers.TryGetValue(caught.Angler, out var own) ? own.Taking(caught) : null))
            .ToList();
        _fishOfSpell = placed.Where(pair => pair.Spell is not null).ToLookup(pair => pair.Spell!.Value, pair => pair.caught);
        WithoutHours = [.. placed.Where(pair => pair.Spell is null).Select(pair => pair.caught)];
    }

    /// <summary>Fish that were caught while no hours were counted for them.</summary>
    public IReadOnlyList<CaughtFish> WithoutHours { get; }

    /// <summary>Keys of the species that the spells took, the commonest first.</summary>
    public IReadOnlyList<string> Species =>
    [
        .. _fishOfSpell.SelectMany(fish => fish)
            .GroupBy(caught => caught.Species)
            .OrderByDescending(kind => kind.Count())
            .ThenBy(kind => kind.Key, StringComparer.Ordinal)
            .Select(kind => kind.Key),
    ];

    /// <summary>Fish of a species, and all line-hours.</summary>
    /// <param name="species">Key of the species.</param>
    public Tally Total(string species) => Tally.Total(_spells.Select((spell, index) =>
        new Tally(_fishOfSpell[index].Count(caught => caught.Species == species), LineTime(spell, spell.Up - spell.Down))));

    /// <summary>Counts the fishing by some dimensions.</summary>
    /// <param name="dimensions">What to tell apart; none for one cell.</param>
    /// <param name="species">Keys of the species that count: an hour is an hour for each of them.</param>
    public EffortCount By(IReadOnlyCollection<EffortDimension> dimensions, IReadOnlyCollection<string> species)
    {
        var cells = new Dictionary<EffortKey, List<Tally>>();
        var unrecorded = new List<Tally>();
        for (var index = 0; index < _spells.Count; index++)
        {
            var spell = _spells[index];
            var fish = _fishOfSpell[index].Where(caught => species.Contains(caught.Species)).ToList();
            if (KeyOf(spell, dimensions) is { } key)
            {
                Add(cells, key, spell, fish, dimensions, species);
            }
            else
            {
                unrecorded.Add(new Tally(fish.Count, LineTime(spell, spell.Up - spell.Down)));
            }
        }

        return new EffortCount([.. cells.Select(cell => new CellCount(cell.Key, cell.Value))], Tally.Total(unrecorded));
    }

    private static void Add(
        Dictionary<EffortKey, List<Tally>> cells, EffortKey key, FishedSpell spell, List<CaughtFish> fish,
        IReadOnlyCollection<EffortDimension> dimensions, IReadOnlyCollection<string> species)
    {
        foreach (var kind in dimensions.Contains(EffortDimension.Species) ? species : (IEnumerable<string?>)[null])
        {
            var own = kind is null ? fish : fish.Where(caught => caught.Species == kind).ToList();
            foreach (var (part, length, count) in Pieces(spell, own, dimensions.Contains(EffortDimension.Time)))
            {
                var cell = key with { Species = kind, Time = part };
                if (!cells.TryGetValue(cell, out var tallies))
                {
                    cells[cell] = tallies = [];
                }

                tallies.Add(new Tally(count, LineTime(spell, length)));
            }
        }
    }

    private static IEnumerable<(DayPart? Part, TimeSpan Length, int Fish)> Pieces(FishedSpell spell, List<CaughtFish> fish, bool byTime)
    {
        if (!byTime)
        {
            return [(null, spell.Up - spell.Down, fish.Count)];
        }

        var caught = fish.CountBy(one => DayParts.Of(one.At.ToOffset(spell.Down.Offset))).ToDictionary();
        var lengths = DayParts.Cut(spell.Down, spell.Up)
            .GroupBy(piece => piece.Part)
            .ToDictionary(part => part.Key, part => part.Aggregate(TimeSpan.Zero, (sum, piece) => sum + piece.Length));
        return lengths.Keys.Union(caught.Keys).Select(part => ((DayPart?)part, lengths.GetValueOrDefault(part), caught.GetValueOrDefault(part)));
    }

    private static EffortKey? KeyOf(FishedSpell spell, IReadOnlyCollection<EffortDimension> dimensions)
    {
        var (presentation, mood, depth) = (
            dimensions.Contains(EffortDimension.Presentation), dimensions.Contains(EffortDimension.Mood), dimensions.Contains(EffortDimension.Depth));
        return (presentation && spell.Presentation is null) || (mood && spell.Mood is null) || (depth && spell.Depth is null)
            ? null
            : new EffortKey
            {
                Presentation = presentation ? spell.Presentation : null,
                Mood = mood ? spell.Mood : null,
                Depth = depth ? DepthZone.Of(spell.Depth!.Value) : null,
            };
    }

    private static Duration LineTime(FishedSpell spell, TimeSpan length) => Duration.FromHours(spell.Lines * length.TotalHours);
}
