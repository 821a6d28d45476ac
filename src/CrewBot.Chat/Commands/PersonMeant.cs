using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Commands;

/// <summary>Finds whom somebody means by a name, which two people of a crew may share; a mention and an id mean one.</summary>
internal static class PersonMeant
{
    /// <summary>Somebody who is known by their number; who was erased has a name still, and no id.</summary>
    public static CrewMember Known(long id, string name, IEnumerable<CrewMember> crew) =>
        crew.FirstOrDefault(member => member.Id == id) ?? new CrewMember(id, name, CrewRole.Member, null);

    /// <summary>Those whom a name, a mention or an id fits; more than one only where they share the name.</summary>
    public static IReadOnlyList<CrewMember> Fitting(string said, IEnumerable<CrewMember> people)
    {
        // Those who were erased can't be told apart any more: one stands for them.
        var (id, all) = (PersonReader.IdOf(said), people.ToList());
        return all.FirstOrDefault(person => person.PlatformId == id) is { } pointedAt
            ? [pointedAt]
            : [.. all.Where(person => RecordSet.Plain(person.Name) == RecordSet.Plain(id)).DistinctBy(person => person.PlatformId)];
    }

    /// <summary>Asks which of several is meant, so that it can be answered where people are mentioned and where they are not.</summary>
    public static string Which(CommandOption option, string said, IReadOnlyList<CrewMember> fitting) =>
        $"{fitting.Count} people are called {Quoting.Quote(said)}: mention the one you mean, or give the id, {string.Join(" or ", fitting.Select(person => person.PlatformId).OfType<string>().Select(id => CommandLine.Pair(option.Name, id)))}.";
}
