using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Privacy;

/// <summary>The numbers that replies about privacy hold.</summary>
public static class PrivacyFigures
{
    public static readonly FigureKey<double> Rows = new("privacy.rows", "", "rows of the database that name the person", x => x);

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } = [Rows];
}
