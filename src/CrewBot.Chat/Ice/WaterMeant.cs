using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Ice;

/// <summary>The water that a question is about.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Because">"Loon Basin as on trip 3", to be said in the answer; null where the question names the water.</param>
internal sealed record WaterMeant(string Name, string? Because)
{
    /// <summary>The water as it was said, else that of the asker's trip of today, else the only one that the crew has.</summary>
    /// <returns>It, or in a line which waters there are.</returns>
    public static async Task<Reading<WaterMeant>> FindAsync(CrewSession session, Request request, IceOptions options)
    {
        if (request.TryGet(options.WaterSaid, out var said))
        {
            return new WaterMeant(said.Name, null);
        }

        if (await new MemberRepository(session).FindAsync(request.Caller.Member) is { } member
            && await TripToday.FindAsync(session, member, request.At) is { } trip)
        {
            return new WaterMeant(trip.Water, $"{trip.Water} as on trip {trip.Number}");
        }

        var waters = request.Caller.Waters.Select(water => water.Name).ToList();
        return waters switch
        {
            [] => new Misread($"water is missing. Give {options.WaterSaid.AcceptedFrom(request.Caller)}."),
            [var only] => new WaterMeant(only, $"{only}, your crew's only water"),
            _ => new Misread($"Which water? This crew has {Listing.Of(waters)}. Give water:\"{waters[0]}\"."),
        };
    }
}
