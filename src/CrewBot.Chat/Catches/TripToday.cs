using CrewBot.Core.Fish;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Catches;

/// <summary>The trip that an angler is on.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Water">Where to.</param>
/// <param name="Species">The key of the species they are after; null when nobody said.</param>
/// <param name="Depth">How deep they mean to fish; null when nobody said.</param>
internal sealed record TripToday(long Number, string Water, string? Species, ExactLength? Depth)
{
    /// <summary>The trip that somebody was on at an instant; null for none.</summary>
    public static async Task<TripToday?> FindAsync(CrewSession session, CrewMember member, DateTimeOffset at)
    {
        if (await new TripRepository(session).NextAsync(at) is not { } trip || trip.MeetAt > at
            || !trip.Roster.Parties.Any(party => party.MemberId == member.Id && party.Answer == TripAnswer.In))
        {
            return null;
        }

        var water = (await new WaterRepository(session).AllAsync()).First(water => water.Id == trip.WaterId).Name;
        return new TripToday(trip.Number, water, trip.Species, trip.Depth);
    }
}
