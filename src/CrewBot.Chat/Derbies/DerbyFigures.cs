using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;

namespace CrewBot.Chat.Derbies;

/// <summary>The numbers that derby replies hold.</summary>
public static class DerbyFigures
{
    public static readonly FigureKey<double> Number = new("derby.number", "", "number of the derby within the crew", x => x);
    public static readonly FigureKey<double> Entry = new("derby.entry", "", "number of the entry within the derby", x => x);
    public static readonly FigureKey<ExactLength> Scored = new("derby.scored", "mm", "length of the fish on the derby's board", x => x.Length.Millimeters);
    public static readonly FigureKey<double> Rank = new("derby.rank", "", "place in the standings", x => x);
    public static readonly FigureKey<double> Total = new("derby.total", "", "total by the derby's rule, in the board's unit, points, per cent or fish", x => x);
    public static readonly FigureKey<double> Fish = new("derby.fish", "", "fish that count", x => x);
    public static readonly FigureKey<double> Waiting = new("derby.waiting", "", "entries that wait for a ruling", x => x);

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } = [Number, Entry, Scored, Rank, Total, Fish, Waiting];
}
