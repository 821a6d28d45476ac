using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice leave</c>: this channel follows a water no more.</summary>
public sealed class LeaveIce(IceOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice leave", "Steward: this channel follows a water no more", "/ice leave water:\"Loon Basin\"", [options.Water])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => book.WriteOnceAsync(
        request,
        async (session, _) =>
        {
            if (request.Caller.Role < Role.Steward)
            {
                return Reply.Refuse("Only a steward says what a channel follows.");
            }

            var water = request.Get(options.Water).Name;
            return request.Place is { } place
                && await new WaterRepository(session).FindAsync(water) is { } id
                && await new IceFollowerRepository(session).LeaveAsync(id, place)
                    ? new Reply { Headline = $"This channel follows {water} no more.", Lines = ["Corrections of what it was told still reach it."] }
                    : Reply.Refuse($"This channel does not follow {water}.");
        },
        cancellationToken);
}
