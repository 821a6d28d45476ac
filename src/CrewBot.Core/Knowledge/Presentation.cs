using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>A way of showing a bait or lure to fish under the ice.</summary>
public sealed record Presentation : TradeRecord
{
    /// <summary>Place on the scale from passive (1) to aggressive; null for one that stands beside the scale.</summary>
    public int? Step { get; init; }

    /// <summary>Lies or hangs by itself under a tip-up or set rod.</summary>
    public bool SetLine { get; init; }

    /// <summary>How to work it, for each mood it suits; a mood that is missing is one it does not suit.</summary>
    public required IReadOnlyDictionary<Mood, string> Work { get; init; }

    /// <summary>How a bite shows.</summary>
    public required string Bite { get; init; }

    /// <summary>How far off the bottom it is fished, where that does not depend on the species.</summary>
    public ByMood<Length>? OffBottom { get; init; }

    /// <summary>Spins on the drop or the retrieve and twists line.</summary>
    public bool TwistsLine { get; init; }

    /// <summary>How loud it is to fish, 0 (silent) to 4 (heard across the flat).</summary>
    public required int Loudness { get; init; }

    /// <summary>How far it calls, in words.</summary>
    public required string Calls { get; init; }

    /// <summary>Hooks on the whole thing, each treble counted as one.</summary>
    public required int Hooks { get; init; }

    /// <summary>How many of the hooks are trebles.</summary>
    public required int Trebles { get; init; }

    /// <summary>The sizes it is made in, lightest first.</summary>
    public required IReadOnlyList<LureStep> Sizes
    {
        get;
        init
        {
            field = value;
            Weights = [.. value.Select(size => size.Weight)];
        }
    }

    /// <summary>The weights of its sizes, lightest first.</summary>
    internal Mass[] Weights { get; private init; } = [];

    /// <summary>For each size class it serves, the weight to start from.</summary>
    public required IReadOnlyDictionary<SizeClass, Mass> StartWeight { get; init; }

    /// <summary>For each size class it serves, the outfit that fishes it.</summary>
    public required IReadOnlyDictionary<SizeClass, string> Outfits { get; init; }

    /// <summary>Lure material keys, usual one first.</summary>
    public required IReadOnlyList<string> Materials { get; init; }

    /// <summary>Density of the whole body where it is not solid metal; null where the material's own counts.</summary>
    public Density? BodyDensity { get; init; }

    /// <summary>Sinking speed as a share of a bare ball's of the same mass and density: a judgement for anything but a ball.</summary>
    public required Spread<double> Fall { get; init; }

    /// <summary>What the weight is, as the end of "1/8 oz lead …": jig head, spoon, split shot.</summary>
    public required string Body { get; init; }

    /// <summary>Key of the knot at the lure.</summary>
    public required string Knot { get; init; }

    /// <summary>Hangs from a small snap, which lets it swing and be changed with cold hands.</summary>
    public bool Snap { get; init; }
}
