using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Catches;

/// <summary>The span of a board: from when, until when, on which water, and what it is called.</summary>
/// <param name="From">From when.</param>
/// <param name="Until">Until when.</param>
/// <param name="WaterId">The water; null for all of them, 0 for one that nothing is stored of.</param>
/// <param name="Words">"season on Loon Basin", "trip 3 on Loon Basin".</param>
internal sealed record BoardSpan(DateTimeOffset From, DateTimeOffset Until, long? WaterId, string Words)
{
    /// <summary>The span that a request names.</summary>
    /// <returns>It, or in a line why there is none.</returns>
    public static async Task<Reading<BoardSpan>> FindAsync(CrewSession session, Request request, CatchOptions options, Period period)
    {
        var waters = new WaterRepository(session);
        var water = request.GetOr(options.Water, null!);
        long? waterId = water is null ? null : await waters.FindAsync(water.Name) ?? 0;
        var where = water is null ? "" : $" on {water.Name}";
        if (period != Period.Trip)
        {
            return new BoardSpan(PeriodReader.StartOf(period, request.At, request.Caller.Zone), request.At, waterId, WordOf(period) + where);
        }

        if (await TripAsync(session, request, options) is not { } trip)
        {
            return new Misread(request.TryGet(options.Trip, out var number)
                ? $"There is no trip {number} that has begun."
                : "No trip has begun yet: /trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" plans one.");
        }

        where = water is null ? $" on {(await waters.AllAsync()).First(one => one.Id == trip.WaterId).Name}" : where;
        var ended = trip.EndedAt is { } end && end < request.At ? end : request.At;
        return new BoardSpan(trip.BeganAt, ended, waterId ?? trip.WaterId, $"trip {trip.Number}{where}");
    }

    private static async Task<Trip?> TripAsync(CrewSession session, Request request, CatchOptions options)
    {
        var trips = new TripRepository(session);
        return request.TryGet(options.Trip, out var number)
            ? await trips.FindAsync(number) is { IsCancelled: false } trip && trip.BeganAt <= request.At ? trip : null
            : await trips.LastAsync(request.At);
    }

    private static string WordOf(Period period) => period switch
    {
        Period.All => "whole log",
        Period.Day => "last 24 hours",
        _ => period.ToString().ToLowerInvariant(),
    };
}
