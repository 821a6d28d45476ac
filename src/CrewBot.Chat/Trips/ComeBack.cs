using CrewBot.Chat.Commands;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip back</c>: a party is off the ice. Lines that were left down are closed with it.</summary>
public sealed class ComeBack(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip back", "Your party is off the ice, lines up", "/trip back trip:1", [options.Trip, options.Who])
    {
        AlsoSaid =
        [
            "home", "back home", "we're home", "were home", "i'm back", "im back", "we're back", "off the ice", "i'm off the ice", "im off the ice",
            "we're off the ice", "were off the ice", "trip home", "trip return", "trip done", "trip end", "trip finish", "trip over",
        ],
        FromAnywhere = true,
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ChangeWhereOutAsync(request, (scene, member, session) => BackAsync(request, scene, member, session), cancellationToken);

    private async Task<TripChange> BackAsync(Request request, TripScene scene, CrewMember member, CrewSession session)
    {
        if (!TripParties.TryFindOut(scene, member, request, options.Who, out var party, out var refusal))
        {
            return TripChange.Refuse(refusal);
        }

        var spells = new LineSpellRepository(session);
        var down = await spells.OpenOfAsync(party.MemberId);
        foreach (var spell in down)
        {
            await spells.CloseAsync(spell.Number, request.At);
        }

        return TripParties.Change(scene, party with { BackAt = request.At }, changed =>
        {
            var still = changed.Trip.Roster.Parties.Where(one => one.IsOnTheIce).Select(one => changed.NameOf(one.MemberId)).ToList();
            return new Reply
            {
                Headline = $"{TripParties.Named(scene, party)} back{(party.DueBack + TripRules.Grace < request.At ? ", late" : "")}",
                Lines =
                [
                    .. down.Count == 0 ? [] : (string[])[$"{TripWords.Count(down.Sum(spell => spell.Lines), "line")} left down: closed now."],
                    still.Count == 0 ? "Everybody who went out is back." : $"Still on the ice: {string.Join(", ", still)}.",
                ],
                Audience = Audience.Crew,
            };
        });
    }
}
