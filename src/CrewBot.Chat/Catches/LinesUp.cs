using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Effort;
using CrewBot.Storage.Catches;
using UnitsNet;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/lines up</c>: stops counting line-hours.</summary>
public sealed class LinesUp(CatchOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "lines up", "Your lines are out of the water: line-hours stop", "/lines up when:\"10 min ago\"", [options.When])
    {
        FromAnywhere = true,
        AlsoSaid = ["lines in", "lines out", "pull lines", "pull the lines", "reel up"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var spells = new LineSpellRepository(session);
            var open = await spells.OpenOfAsync(member.Id);
            var at = request.GetOr(options.When, Moment.Now).From(request.At, request.Caller.Zone);
            if (FaultOf(request, open, at) is { } fault)
            {
                return Reply.Refuse(fault);
            }

            foreach (var spell in open)
            {
                await spells.CloseAsync(spell.Number, at);
            }

            var lineTime = Duration.FromHours(open.Sum(spell => (at - spell.DownAt).TotalHours * spell.Lines));
            return new Reply
            {
                Headline = $"Lines up: {lineTime.Hours.ToString("0.0", CultureInfo.InvariantCulture)} line-hours since {Moment.Show(open[0].DownAt, request.At)}",
                Figures = [CatchFigures.LineHours.Of(lineTime)],
            };
        }, cancellationToken);

    private static string? FaultOf(Request request, IReadOnlyList<LineSpell> open, DateTimeOffset at)
    {
        if (open.Count == 0)
        {
            return "You have no lines down. /lines down starts the count.";
        }

        if (at > request.At)
        {
            return Moment.StillToCome(at, "they came up", request);
        }

        if (open.FirstOrDefault(spell => spell.DownAt > at) is { } later)
        {
            return $"They went down only at {Moment.Show(later.DownAt, request.At)}: give a later time.";
        }

        // An "up" was forgotten: it is asked for, not made up.
        return at - open[0].DownAt > FishedSpell.Longest
            ? $"They went down at {Moment.Show(open[0].DownAt, request.At)}, too long ago for one day out: give when they came up, such as when:\"2027-01-16 17:00\"."
            : null;
    }
}
