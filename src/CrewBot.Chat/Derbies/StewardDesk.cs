using CrewBot.Chat.Commands;
using CrewBot.Core.Derbies;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>What a steward needs before deciding about an entry: the derby, the entry, and the right to.</summary>
internal sealed record StewardDesk(DerbySheet Sheet, EntryState Entry)
{
    public static async Task<Reading<StewardDesk>> OpenAsync(
        Request request, DerbyOptions options, CrewSession session, CrewMember steward, DerbyBoards boards, int number)
    {
        var found = await DerbyFinder.FindOnlyAsync(
            request, options, session, steward.Id, derby => DerbyFinder.HasBegun(derby, request.At));
        if (found.Fault is { } none)
        {
            return new Misread(none);
        }

        var derby = found.Value!;
        if (IsFinal(derby, request.At))
        {
            return new Misread($"{derby.Name} is closed and the time for protests is over: /derby reopen first.");
        }

        var sheet = await boards.SheetAsync(session, derby, request);
        if (!sheet.Board.Entries.TryGetValue(number, out var entry))
        {
            return new Misread($"There is no entry {number} in {derby.Name}. /derby rulings lists what waits.");
        }

        var others = (await new MemberRepository(session).AllAsync()).Where(member => member.Role >= CrewRole.Steward && member.Id != steward.Id).ToList();
        return entry.Angler == steward.Id && others.Count > 0
            ? new Misread($"Entry {number} is your own: {string.Join(" or ", others.Take(3).Select(member => member.Name))} decides about it.")
            : new StewardDesk(sheet, entry);
    }

    /// <summary>Closed, and no protest can be made any more.</summary>
    public static bool IsFinal(Derby derby, DateTimeOffset at) =>
        derby.IsClosed && at > derby.Settings.Window.LastWord + derby.Settings.ProtestTime;
}
