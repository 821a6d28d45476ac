using CrewBot.Chat.Commands;
using CrewBot.Storage.Breaks;

namespace CrewBot.Chat.Rigs;

/// <summary>Answers <c>/rig unbroke</c>: a break-off that was reported by mistake no longer counts.</summary>
public sealed class VoidBreak(CrewBook book) : ICommandHandler
{
    internal static readonly CommandOption<int> Number = CommandOption.Required(
        "break", "The break-off's number", new WholeNumberReader(1, int.MaxValue));

    public CommandInfo Info { get; } = new(
        "rig unbroke", "Let a break-off that you reported by mistake no longer count", "/rig unbroke break:1", [Number])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var breaks = new BreakOffRepository(session);
            var number = request.Get(Number);
            var reporter = await breaks.ReporterAsync(number);
            if (reporter is null)
            {
                return Reply.Refuse($"There is no break-off {number} in this crew, or it no longer counts: /rig broke says the number of each.");
            }

            if (reporter != member.Id && request.Caller.Role < Role.Steward)
            {
                return Reply.Refuse($"Break-off {number} is somebody else's: they or a steward may take it back.");
            }

            await breaks.VoidAsync(number, request.At);
            return new Reply { Headline = $"Break-off {number} no longer counts" };
        }, cancellationToken);
}
