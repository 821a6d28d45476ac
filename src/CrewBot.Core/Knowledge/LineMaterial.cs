using CrewBot.Core.Lines;
using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>What a line or a bite leader is made of.</summary>
public sealed record LineMaterial : TradeRecord
{
    public required LineUse Use { get; init; }

    public required Density Density { get; init; }

    /// <summary>Young's modulus of the solid, wet.</summary>
    public required Spread<Pressure> Modulus { get; init; }

    /// <summary>Solid share of the nominal circle: 1 for a single strand, less for a braid or a cable.</summary>
    public required double SolidFraction { get; init; }

    /// <summary>Test against diameter, thinnest first.</summary>
    public required IReadOnlyList<LineSize> Sizes { get; init; }

    /// <summary>The same as a table that reads between its rows.</summary>
    public LineSizes Table => field ??= new LineSizes(Sizes);

    /// <summary>What it really holds dry and straight, as a share of its label.</summary>
    public required Spread<double> OverLabel { get; init; }

    /// <summary>Water taken up at saturation, in per cent by mass.</summary>
    public required Spread<double> WaterUptakePercent { get; init; }

    /// <summary>Index of refraction; null for an opaque material.</summary>
    public double? RefractiveIndex { get; init; }

    /// <summary>Seasons before it wants replacing.</summary>
    public required Spread<double> LifeSeasons { get; init; }

    /// <summary>Price of a hundred metres in the crew's own money: an example to edit.</summary>
    public required Spread<double> PricePer100Metres { get; init; }

    /// <summary>What frost does to it, in a sentence.</summary>
    public required string InFrost { get; init; }
}
