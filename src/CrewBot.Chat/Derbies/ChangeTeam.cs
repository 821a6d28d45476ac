using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby team</c>: moves an angler and their fish to another team, before the end.</summary>
public sealed class ChangeTeam(DerbyOptions options, CrewBook book, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby team", "Fish for another team", "/derby team team:North", [options.NewTeam, options.Derby]) { Writes = true };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var found = await DerbyFinder.FindOnlyAsync(request, options, session, member.Id, derby => derby is { HasJoined: true, IsClosed: false });
            if ((found.Fault ?? FaultOf(request, found.Value!)) is { } fault)
            {
                return Reply.Refuse(fault);
            }

            var (derby, team) = (found.Value!, request.Get(options.NewTeam));
            await new LedgerRepository(session).AppendAsync(derby.Number, at => new Joined(at, request.At, member.Id, member.Id, team));
            await posts.KeepAsync(session, derby, request);
            return new Reply
            {
                Headline = $"{member.Name} fishes for {team} now",
                Lines = ["Fish already entered come along; the change is on the record."],
                Figures = [DerbyFigures.Number.Of(derby.Number)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);

    private static string? FaultOf(Request request, Derby derby) =>
        derby.IsClosed ? $"{derby.Name} is closed: teams stay as they are."
        : derby.Settings.Teams is null ? $"{derby.Name} has no teams: everybody fishes for themselves."
        : !derby.HasJoined ? $"You are not in {derby.Name} yet: join with /derby join team:North"
        : derby.Settings.Window.Ends < request.At ? $"{derby.Name} is fished: teams stay as they are."
        : null;
}
