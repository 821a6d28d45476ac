using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>What someone on the ice asks a rig for.</summary>
public sealed record RigAsk
{
    public required Species Species { get; init; }

    /// <summary>Other fish that are likely to bite.</summary>
    public IReadOnlyList<Species> AlsoThere { get; init; } = [];

    /// <summary>Depth of the water, from 0.3 to 150 m.</summary>
    public required Length Depth { get; init; }

    public Mood Mood { get; init; } = Mood.Neutral;

    public FishSize Size { get; init; } = FishSize.Typical;

    /// <summary>The bait to use; null leaves the choice open.</summary>
    public Bait? Bait { get; init; }

    public Place Place { get; init; } = Place.Open;

    /// <summary>Air temperature; null when nobody said.</summary>
    public Temperature? Air { get; init; }

    /// <summary>Water temperature, from 0 to 30 °C.</summary>
    public required Temperature Water { get; init; }

    /// <summary>Current under the ice, from 0 to 1 m/s.</summary>
    public Speed Current { get; init; }

    /// <summary>The rules of the water; null when nobody filled them in.</summary>
    public WaterRules? Rules { get; init; }

    /// <summary>Keys of what must not be used: materials, baits, presentations; also <see cref="Ban.Treble"/> and bait kinds.</summary>
    public IReadOnlySet<string> Without { get; init; } = new HashSet<string>();

    /// <summary>Diameter of the hole.</summary>
    public required Length Hole { get; init; }

    /// <summary>The presentation to use; null leaves the choice open.</summary>
    public Presentation? Presentation { get; init; }

    /// <summary>The line on the reel, where all else may be bought; null leaves the choice open.</summary>
    public LineChoice? Mainline { get; init; }

    /// <summary>What the rig is to be tied from, and from nothing else; null when anything may be bought.</summary>
    public Tackle? Tackle { get; init; }

    /// <summary>What the crew's own fishing says; it orders what is allowed and allows nothing. Null when there is none.</summary>
    public CrewExperience? Experience { get; init; }

    /// <summary>
    /// Key of what the trade shows first of all that, by the crew's own fishing, a presentation goes ahead of; null when it
    /// goes ahead of nothing, or was asked for.
    /// </summary>
    public string? OutfishedBy(Presentation presentation) => Presentation is null
        ? Species.Presentations[Mood]
            .TakeWhile(key => key != presentation.Key)
            .FirstOrDefault(key => Experience?.Outfishes(presentation.Key, key) == true)
        : null;

    /// <summary>How many sizes heavier (or, below zero, lighter) than the planner would choose.</summary>
    public int Step { get; init; }
}
