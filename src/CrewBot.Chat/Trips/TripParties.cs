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
        TripScene scene, CrewMember asker, Request request, CommandOption<string> who,
        [NotNullWhen(true)] out TripParty? party, [NotNullWhen(false)] out string? refusal)
    {
        var isNamed = request.TryGet(who, out var name);
        var outNow = scene.Trip.Roster.Parties.Where(one => one.IsOnTheIce).ToList();
        var people = scene.PeopleOf(outNow).ToList();
        var meant = isNamed ? PersonMeant.Fitting(name!, people) : [asker];
        party = meant is [var only] ? outNow.FirstOrDefault(one => one.MemberId == only.Id) : null;
        refusal = party is not null ? null
            : !isNamed ? "You are not out on this trip: /trip out says that you go onto the ice."
            : meant.Count > 1 ? PersonMeant.Which(who, name!, meant)
            : $"{Quoting.Quote(name!)} is not out on this trip. Out now: {(people.Count == 0 ? "nobody" : string.Join(", ", people.Select(one => one.Name)))}.";
        return party is not null;
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
