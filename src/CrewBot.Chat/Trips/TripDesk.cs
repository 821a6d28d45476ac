using CrewBot.Chat.Commands;
using CrewBot.Chat.Ice;
using CrewBot.Chat.Trips.Unasked;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Finds the trip that a request is about, and keeps what becomes of it.</summary>
public sealed class TripDesk(TripOptions options, TripPosts posts, TradeKnowledge knowledge, CrewBook book)
{
    /// <summary>Answers a question about a trip.</summary>
    public Task<Reply> ReadAsync(Request request, Func<TripScene, Reply> answer, CancellationToken cancellationToken) =>
        ReadAsync(request, (scene, _) => Task.FromResult(answer(scene)), cancellationToken);

    /// <summary>Answers a question about a trip that asks for more than the trip holds.</summary>
    public Task<Reply> ReadAsync(Request request, Func<TripScene, CrewSession, Task<Reply>> answer, CancellationToken cancellationToken) => book.ReadAsync(
        request,
        async session => await FindAsync(request, session) is { } trip ? await answer(await SceneOfAsync(trip, session, request.At), session) : NoTrip(request),
        cancellationToken);

    /// <summary>Changes a trip that is still to come or under way.</summary>
    /// <param name="request">The request.</param>
    /// <param name="change">Says what the trip becomes, or refuses. Its answer is asked for with the trip as it has become.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public Task<Reply> ChangeAsync(
        Request request, Func<TripScene, CrewMember, CrewSession, Task<TripChange>> change, CancellationToken cancellationToken) =>
        ChangeAsync(request, (session, _) => FindAsync(request, session), change, cancellationToken);

    /// <summary>Changes the trip on which somebody is out, however long ago it was to be over: whoever is on the ice can always come back.</summary>
    /// <param name="request">The request.</param>
    /// <param name="change">Says what the trip becomes, or refuses. Its answer is asked for with the trip as it has become.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public Task<Reply> ChangeWhereOutAsync(
        Request request, Func<TripScene, CrewMember, CrewSession, Task<TripChange>> change, CancellationToken cancellationToken) =>
        ChangeAsync(request, (session, member) => FindWhereOutAsync(request, session, member), change, cancellationToken);

    private Task<Reply> ChangeAsync(
        Request request, Func<CrewSession, CrewMember, Task<Trip?>> find, Func<TripScene, CrewMember, CrewSession, Task<TripChange>> change,
        CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            if (await find(session, member) is not { } trip)
            {
                return NoTrip(request);
            }

            var scene = await SceneOfAsync(trip, session, request.At);
            if (trip.IsCancelled)
            {
                return Reply.Refuse($"Trip {trip.Number} is cancelled. /trip plan starts another.");
            }

            var changed = await change(scene, member, session);
            if (changed.Refusal is { } refusal)
            {
                return refusal;
            }

            await new TripRepository(session).SaveAsync(changed.Trip!);
            var after = await SceneOfAsync(changed.Trip!, session, request.At);
            await posts.KeepAsync(session, after, request);
            return changed.Answer!(after);
        }, cancellationToken);

    /// <summary>What was reported of a water has changed: whoever goes there reads of it.</summary>
    public async Task IceChangedAsync(Request request, CrewSession session, long waterId)
    {
        foreach (var trip in await new TripRepository(session).ComingAsync(waterId, request.At))
        {
            await posts.KeepAsync(session, await SceneOfAsync(trip, session, request.At), request);
        }
    }

    /// <summary>Somebody is gone for good: they come on no trip any more, but for one where they have gone onto the ice.</summary>
    public async Task ForgetAsync(Request request, CrewSession session, long member)
    {
        var trips = new TripRepository(session);
        foreach (var trip in await trips.UnfinishedAsync(request.At - TripRules.StillUnderWay))
        {
            var party = trip.Roster.Parties.FirstOrDefault(party => party.MemberId == member);
            if (party is { OutAt: null } || (party is null && trip.Roster.Waivers.Any(waiver => waiver.MemberId == member)))
            {
                var rest = trip with { Roster = trip.Roster.Without(member) };
                await trips.SaveAsync(rest);
                await posts.KeepAsync(session, await SceneOfAsync(rest, session, request.At), request);
            }
        }
    }

    /// <summary>A trip with names, water and what is known of its ice.</summary>
    public async Task<TripScene> SceneOfAsync(Trip trip, CrewSession session, DateTimeOffset now)
    {
        var members = await new MemberRepository(session).AllAsync();
        var waters = await new WaterRepository(session).AllAsync();
        var water = waters.First(water => water.Id == trip.WaterId);
        return new TripScene(trip, water.Name, members.ToDictionary(member => member.Id, member => member.Name), knowledge)
        {
            At = water.At,
            Rules = RulesOfWater.From(water),
            Ice = await IcePicture.ReadAsync(session, trip.WaterId, now),
            Contacts = await ContactsAsync(trip, members, session),
        };
    }

    private static async Task<TripContacts> ContactsAsync(Trip trip, IEnumerable<CrewMember> members, CrewSession session)
    {
        var crew = new CrewRepository(session);
        var channels = (await crew.ChannelsAsync()).ToDictionary(pair => pair.Purpose, pair => pair.Channel);
        return new TripContacts(
            channels.GetValueOrDefault("trip") ?? trip.Room, channels.GetValueOrDefault("contact"), await crew.FindAsync(),
            members.ToDictionary(member => member.Id));
    }

    private Task<Trip?> FindAsync(Request request, CrewSession session) => request.TryGet(options.Trip, out var number)
        ? new TripRepository(session).FindAsync(number)
        : new TripRepository(session).NextAsync(request.At - TripRules.StillUnderWay);

    // The current trip is another one when a party said that it would be late into the next day.
    private async Task<Trip?> FindWhereOutAsync(Request request, CrewSession session, CrewMember member)
    {
        if (request.Has(options.Trip))
        {
            return await FindAsync(request, session);
        }

        var who = request.TryGet(options.Who, out var name)
            ? [.. PersonMeant.Fitting(name, await new MemberRepository(session).AllAsync()).Select(one => one.Id)]
            : (IReadOnlyList<long>)[member.Id];
        var trips = await new TripRepository(session).UnfinishedAsync(request.At - TripRules.LongestTrip);
        return trips.FirstOrDefault(trip => trip.Roster.Parties.Any(party => party.IsOnTheIce && who.Contains(party.MemberId)))
            ?? await FindAsync(request, session);
    }

    private Reply NoTrip(Request request) => Reply.Refuse(request.TryGet(options.Trip, out var number)
        ? $"There is no trip {number}."
        : "No trip is planned. /trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" starts one.");
}
