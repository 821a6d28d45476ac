using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby join</c>.</summary>
public sealed class JoinDerby(DerbyOptions options, CrewBook book, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby join", "Take part in the derby", "/derby join", [options.Team, options.Derby]) { Writes = true };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var found = await DerbyFinder.FindAsync(request, options, session, member.Id);
            if ((found.Fault ?? FaultOf(request, found.Value!)) is { } fault)
            {
                return Reply.Refuse(fault);
            }

            var (derby, team) = (found.Value!, request.GetOr(options.Team, null!));
            await new LedgerRepository(session).AppendAsync(derby.Number, at => new Joined(at, request.At, member.Id, member.Id, team));
            await posts.KeepAsync(session, derby, request);
            return new Reply
            {
                Headline = $"{member.Name} is in {derby.Name}{(team is null ? "" : $" for {team}")}",
                Lines = ["Log each fish with /catch log and press Enter, or say /derby enter. Whoever stands beside taps I saw it."],
                Figures = [DerbyFigures.Number.Of(derby.Number)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);

    private string? FaultOf(Request request, Derby derby) =>
        derby.IsClosed ? $"{derby.Name} is closed: a steward opens it again with /derby reopen."
        : derby.HasJoined ? $"You are in {derby.Name} already. /derby team changes your team."
        : derby.Settings.Window.LastWord < request.At ? $"{derby.Name} is over: nothing can be entered any more."
        : derby.Settings.Teams is not null && !request.Has(options.Team) ? $"{derby.Name} is fished in teams: name yours, such as /derby join team:North"
        : derby.Settings.Teams is null && request.Has(options.Team) ? $"{derby.Name} has no teams: everybody fishes for themselves. Say /derby join"
        : null;
}
