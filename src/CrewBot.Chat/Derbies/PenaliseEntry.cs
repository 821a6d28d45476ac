using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby penalty</c>: takes something off a fish, after rounding.</summary>
public sealed class PenaliseEntry(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "derby penalty", "Take something off an entry's length", "/derby penalty entry:4 length:1in reason:\"lost the board\"",
        [options.Entry, options.PenaltyLength, options.Reason, options.Derby])
    {
        Writes = true,
        Role = Role.Steward,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var number = request.Get(options.Entry);
            var opened = await StewardDesk.OpenAsync(request, options, session, member, boards, number);
            if (opened.Fault is { } fault)
            {
                return Reply.Refuse(fault);
            }

            var ((sheet, entry), penalty, reason) = (opened.Value!, request.Get(options.PenaltyLength), request.Get(options.Reason));
            var (words, grid) = (new DerbyWords(sheet.Derby, knowledge), sheet.Settings.Grid);
            if (!grid.IsOnLine(penalty))
            {
                return Reply.Refuse($"A penalty is taken in steps of {words.Length(grid.Step)}: {words.Length(penalty)} is none, {words.Length(penalty.FloorTo(grid.Step))} would be.");
            }

            await new LedgerRepository(session).AppendAsync(sheet.Derby.Number, at => new Penalised(at, request.At, member.Id, number, penalty, reason));
            await posts.KeepAsync(session, sheet.Derby, request);
            var scored = grid.Score(entry.Measured, penalty.Nanometres);
            return new Reply
            {
                Headline = $"Penalty of {words.Length(penalty)} on {words.Entry(entry, sheet)}: it scores {words.Length(scored)}",
                Lines = [$"Reason: {reason}. By {member.Name}; it is on the record.{(entry.Penalty > 0 ? " It takes the place of the penalty before." : "")}"],
                Figures = [DerbyFigures.Number.Of(sheet.Derby.Number), DerbyFigures.Entry.Of(number), DerbyFigures.Scored.Of(scored)],
                Actions = [DerbyActions.Standings(sheet.Derby)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);
}
