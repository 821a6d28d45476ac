using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>What a crew asks of ice beyond the program's own figures.</summary>
/// <param name="Authority">The table it follows; null for none.</param>
/// <param name="Figures">Figures of its own.</param>
internal sealed record IceRules(AuthorityTable? Authority, IReadOnlyList<CrewFigure> Figures)
{
    public static async Task<IceRules> ReadAsync(CrewSession session)
    {
        var rules = new IceRuleRepository(session);
        return new(await rules.AuthorityAsync(), await rules.FiguresAsync());
    }
}
