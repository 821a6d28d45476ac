using CrewBot.Chat.Commands;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>What becomes of a trip.</summary>
public sealed record TripChange
{
    /// <summary>The trip as it becomes; null for a refusal.</summary>
    public Trip? Trip { get; private init; }

    /// <summary>Answers with the trip as it has become.</summary>
    public Func<TripScene, Reply>? Answer { get; private init; }

    /// <summary>Why nothing changes, in a line, and what could be done instead; null when something changes.</summary>
    public Reply? Refusal { get; private init; }

    public static TripChange To(Trip trip, Func<TripScene, Reply> answer) => new() { Trip = trip, Answer = answer };

    public static TripChange Refuse(string why) => Refuse(Reply.Refuse(why));

    public static TripChange Refuse(Reply refusal) => new() { Refusal = refusal };
}
