using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice follow</c>: this channel is told of every report of a water.</summary>
public sealed class FollowIce(IceOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice follow", "Steward: tell this channel of every report of a water", "/ice follow water:\"Loon Basin\"", [options.Water])
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

            if (request.Place is not { } place)
            {
                return Reply.Refuse("There is no channel here to tell. Give /ice follow in the channel that is to be told.");
            }

            var (waters, water) = (new WaterRepository(session), request.Get(options.Water).Name);
            await new IceFollowerRepository(session).FollowAsync(await waters.FindAsync(water) ?? await waters.AddAsync(water), place);
            return new Reply
            {
                Headline = $"This channel follows {water}.",
                Lines = ["It is told of every report from now on; who broke through and open water notify. /ice leave ends it."],
                Cautions = IceCautions.Of(isBad: false),
            };
        },
        cancellationToken);
}
