using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Finds a report that somebody wants to change, and says who may.</summary>
internal static class IceDesk
{
    /// <summary>The report, when the caller may change it; otherwise why not, in a line.</summary>
    public static async Task<Reading<FiledIce>> FindOwnAsync(Request request, CrewSession session, CrewMember member, int number)
    {
        var found = await FindAsync(session, number);
        return found.Fault is not null || found.Value!.Entry.MemberId == member.Id || request.Caller.Role >= Role.Steward
            ? found
            : new Misread($"Report #{number} is {found.Value!.Filer}'s: only they or a steward can change it.");
    }

    /// <summary>A report that stands.</summary>
    public static async Task<Reading<FiledIce>> FindAsync(CrewSession session, int number) =>
        await new IceReportRepository(session).FindAsync(number) is not { } filed ? new Misread($"There is no ice report #{number}.")
        : filed.WithdrawnReason is not null ? new Misread($"Report #{number} is withdrawn already.")
        : filed;

    public static async Task<string> WaterOfAsync(CrewSession session, FiledIce filed) =>
        (await new WaterRepository(session).AllAsync()).First(water => water.Id == filed.Entry.WaterId).Name;
}
