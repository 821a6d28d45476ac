using System.Diagnostics.CodeAnalysis;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Changes one party of a trip.</summary>
internal static class TripParties
{
    /// <summary>The party on the ice that a request is about: somebody's by name, else the asker's own.</summary>
    public static bool TryFindOut(
        TripScene scene, CrewMember asker, string? who, [NotNullWhen(true)] out TripParty? party, [NotNullWhen(false)] out string? refusal)
    {
        party = who is null ? scene.PartyOf(asker.Id) : scene.PartyOf(who);
        var isOut = party is { IsOnTheIce: true };
        var outNow = scene.Trip.Roster.Parties.Where(one => one.IsOnTheIce).Select(one => scene.NameOf(one.MemberId)).ToList();
        refusal = isOut ? null
            : who is null ? "You are not out on this trip: /trip out says that you go onto the ice."
            : $"{Quoting.Quote(who)} is not out on this trip. Out now: {(outNow.Count == 0 ? "nobody" : string.Join(", ", outNow))}.";
        party = isOut ? party : null;
        return isOut;
    }

    /// <summary>"Ana is", "Hal and party (3) are": a party as the beginning of a sentence.</summary>
    public static string Named(TripScene scene, TripParty party, string? verb = null) => party.People == 1
        ? $"{scene.NameOf(party.MemberId)} {verb ?? "is"}"
        : $"{scene.NameOf(party.MemberId)} and party ({party.People}) {verb ?? "are"}";

    public static TripChange Change(TripScene scene, TripParty party, Func<TripScene, Reply> answer) => TripChange.To(
        scene.Trip with
        {
            Roster = scene.Trip.Roster with
            {
                Parties = [.. scene.Trip.Roster.Parties.Select(one => one.MemberId == party.MemberId ? party : one)],
            },
        },
        answer);
}
