using CrewBot.Chat.Commands;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Says who may change an entry: whoever logged it, and a steward.</summary>
internal static class EntryRights
{
    /// <summary>Why an entry can't be changed by somebody, in a line; null when it can.</summary>
    public static string? FaultOf(LoggedCatch? entry, long number, CrewMember member, Request request) => entry switch
    {
        null => $"There is no #{number} in this crew's log. /catch list shows the newest.",
        { IsVoid: true } => $"#{number} is void and stays as it is.",
        _ when entry.Entry.MemberId != member.Id && request.Caller.Role < Role.Steward =>
            $"#{number} is {entry.Angler}'s: they or a steward may change it.",
        _ => null,
    };
}
