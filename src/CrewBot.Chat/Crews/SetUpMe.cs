using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Crews;

/// <summary>Answers <c>/crew me</c>: a person's own units.</summary>
public sealed class SetUpMe(CrewOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "crew me", "Your own units, whatever the crew speaks in", "/crew me units:metric", [options.Units])
    {
        FromAnywhere = true,
        AlsoSaid = ["units", "metric", "customary", "imperial", "switch to metric", "switch to customary"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => request.TryGet(options.Units, out var units)
        ? book.WriteOnceAsync(request, async (session, member) =>
        {
            await new MemberRepository(session).SetUnitsAsync(member.Id, units);
            return Answer(request, units.ToString().ToLowerInvariant());
        }, cancellationToken)
        : Task.FromResult(Answer(request, request.Units.ToString().ToLowerInvariant()));

    private static Reply Answer(Request request, string units) => new()
    {
        Headline = $"{request.Caller.Name}: {units} units, {request.Caller.Role.ToString().ToLowerInvariant()} of this crew",
    };
}
