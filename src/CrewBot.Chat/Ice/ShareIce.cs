using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice share</c>: this crew's side of an agreement to share reports with another crew.</summary>
public sealed class ShareIce(IceOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice share", "Owner: share ice reports with another crew, which must agree too", "/ice share crew:north-shore spot:hidden",
        [options.Crew, options.SpotShown, options.End])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, _) => ShareAsync(request, session), cancellationToken);

    private async Task<Reply> ShareAsync(Request request, CrewSession session)
    {
        if (request.Caller.Role < Role.Owner)
        {
            return Reply.Refuse("Only the crew's owner says with whom it shares.");
        }

        var (partners, other) = (new IcePartnerRepository(session), request.Get(options.Crew));
        if (other == request.Caller.Crew)
        {
            return Reply.Refuse($"{Quoting.Quote(other)} is this crew's own key: the other crew's owner gives it as crew:{other}.");
        }

        if (request.GetOr(options.End, false))
        {
            await partners.EndAsync(other);
            return new Reply { Headline = $"Nothing is shared with {other} any more.", Lines = ["Corrections of what they were told still reach them."] };
        }

        var showsSpot = request.GetOr(options.SpotShown, false);
        await partners.AgreeAsync(other, showsSpot);
        return new Reply
        {
            Headline = await partners.HasAgreedAsync(other) ? $"Ice reports are shared with {other}." : $"Ice reports will be shared with {other} once its owner agrees too.",
            Lines =
            [
                showsSpot ? "They see the exact spot." : "The exact spot, notes and quotes stay hidden from them.",
                $"Their owner gives /ice share crew:{request.Caller.Crew}, and a channel of theirs follows the water by the same name.",
            ],
        };
    }
}
