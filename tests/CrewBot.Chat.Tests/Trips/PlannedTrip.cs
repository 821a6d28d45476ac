using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Trips;

/// <summary>The trip that most tests of trips start from.</summary>
internal static class PlannedTrip
{
    /// <summary>Ana plans trip 1: Loon Basin, tomorrow, 17 January, at 07:00.</summary>
    public static async Task<Reply> PlanTripAsync(this CrewRoom room)
    {
        await room.SayAsync("crew setup water:\"Loon Basin\"");
        return await room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\"");
    }
}
