using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using UnitsNet;

namespace CrewBot.Chat.Catches;

/// <summary>The numbers that catch and line replies hold.</summary>
public static class CatchFigures
{
    public static readonly FigureKey<double> Number = new("catch.number", "", "number of the entry within the crew", x => x);
    public static readonly FigureKey<ExactLength> Length = new("catch.length", "mm", "total length of the fish", x => x.Length.Millimeters);
    public static readonly FigureKey<ExactMass> Weight = new("catch.weight", "g", "weight of the fish by a scale", x => x.Mass.Grams);
    public static readonly FigureKey<Mass> Estimate = new("catch.weight.estimate", "g", "weight estimated from length, or length and girth", x => x.Grams);
    public static readonly FigureKey<Ratio> Relative = new("catch.relative-weight", "%", "weight over the standard weight of its length", x => x.Percent);
    public static readonly FigureKey<ExactLength> Depth = new("catch.depth", "m", "depth of the water it came from", x => x.Length.Meters);
    public static readonly FigureKey<ExactLength> CrewBest = new("catch.crew-best", "mm", "longest of the species in the crew before", x => x.Length.Millimeters);
    public static readonly FigureKey<ExactLength> OwnBest = new("catch.own-best", "mm", "longest of the species by the angler before", x => x.Length.Millimeters);
    public static readonly FigureKey<double> Count = new("catch.count", "", "fish that a list or board counts", x => x);
    public static readonly FigureKey<double> Added = new("import.added", "", "fish that an import adds", x => x);
    public static readonly FigureKey<double> Known = new("import.known", "", "rows of a file that the log has already", x => x);
    public static readonly FigureKey<double> Refused = new("import.refused", "", "rows of a file that are refused", x => x);
    public static readonly FigureKey<Duration> LineHours = new("effort.line-hours", "h", "lines times the hours they were down", x => x.Hours);

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } =
        [Number, Length, Weight, Estimate, Relative, Depth, CrewBest, OwnBest, Count, Added, Known, Refused, LineHours];
}
