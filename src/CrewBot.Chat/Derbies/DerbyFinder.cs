using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Finds the derby that somebody means.</summary>
internal static class DerbyFinder
{
    private const int Newest = 20;

    /// <summary>
    /// The derby that was named; otherwise the one that is on, their own before others', otherwise the next, otherwise the last.
    /// </summary>
    public static async Task<Reading<Derby>> FindAsync(Request request, DerbyOptions options, CrewSession session, long? memberId)
    {
        var derbies = new DerbyRepository(session);
        if (request.TryGet(options.Derby, out var number))
        {
            return await derbies.FindAsync(number, memberId) is { } named
                ? named
                : new Misread($"There is no derby {number} in this crew. /derby rules shows the one that is on.");
        }

        var newest = await derbies.NewestAsync(Newest, memberId);
        return newest
            .OrderBy(derby => derby.IsClosed)
            .ThenByDescending(derby => IsOn(derby, request.At) && derby.HasJoined)
            .ThenByDescending(derby => IsOn(derby, request.At))
            .ThenByDescending(derby => derby.Settings.Window.Starts > request.At)
            .FirstOrDefault() is { } meant
            ? meant
            : new Misread("This crew has no derby yet: a steward sets one up with /derby create.");
    }

    /// <summary>From the first moment that counts to the last at which word of a fish is taken.</summary>
    public static bool IsOn(Derby derby, DateTimeOffset at) =>
        !derby.IsClosed && at >= derby.Settings.Window.Starts && at <= derby.Settings.Window.LastWord;
}
