using CrewBot.Chat.Commands;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Boxes;

/// <summary>What a caller owns, offered while they write.</summary>
internal static class OwnGear
{
    /// <summary>Names of things in their box that hold what is written so far, each once.</summary>
    /// <param name="caller">Whose box.</param>
    /// <param name="begun">What is written so far.</param>
    /// <param name="kinds">Of which kinds; none for all.</param>
    public static IEnumerable<string> Suggest(Caller caller, string begun, params IReadOnlyCollection<BoxKind> kinds) => caller.Gear
        .Where(gear => kinds.Count == 0 || kinds.Contains(gear.Kind))
        .Select(gear => gear.Name)
        .Where(name => name.Contains(begun, StringComparison.OrdinalIgnoreCase))
        .Distinct();
}
