using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Takes somebody, or something that was to be brought, off the list of a trip with all that hangs on it.</summary>
internal static class Leaving
{
    /// <summary>Without somebody who is gone for good: who comes with them, what they bring and answer for, whose wishes name them.</summary>
    public static TripRoster Without(this TripRoster roster, long member)
    {
        var theirs = roster.Items.Where(item => item.MemberId == member).Aggregate(roster, (rest, item) => rest.Without(item));
        return theirs with
        {
            Parties = [.. roster.Parties.Where(party => party.MemberId != member)],
            Waivers = [.. roster.Waivers.Where(waiver => waiver.MemberId != member)],
            Wishes = [.. roster.Wishes.Where(wish => wish.One != member && wish.Other != member)],
            Seats = theirs.Seats.Where(seat => !TripScene.IsOf(seat.Key, member)).ToDictionary(),
        };
    }

    /// <summary>Without a thing: whoever was told to sit in it has no seat, for the next thing may get its number.</summary>
    public static TripRoster Without(this TripRoster roster, TripItem item) => roster with
    {
        Items = [.. roster.Items.Where(one => one.Number != item.Number)],
        Seats = roster.Seats.Where(seat => !seat.Value.StartsWith(TripScene.Prefix(item), StringComparison.Ordinal)).ToDictionary(),
    };
}
