using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Boxes;

/// <summary>The numbers that box replies hold.</summary>
public static class BoxFigures
{
    public static readonly FigureKey<double> Count = new("box.count", "", "things in the box", x => x);

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } = [Count];
}
