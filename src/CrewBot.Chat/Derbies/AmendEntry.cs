using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby amend</c>: the right length of an entry; its catch time stays.</summary>
public sealed class AmendEntry(DerbyOptions options, CatchOptions fish, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "derby amend", "Put the right length to an entry; what it said stays on the record", "/derby amend entry:4 length:22.25in reason:\"misread\"",
        [options.Entry, options.NewLength, options.Reason, fish.Confirm, options.Derby])
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

            var ((sheet, entry), length, reason) = (opened.Value!, request.Get(options.NewLength), request.Get(options.Reason));
            var words = new DerbyWords(sheet.Derby, knowledge);
            if (length.Nanometres == entry.Measured.Nanometres)
            {
                return Reply.Refuse($"Entry {number} says {words.Length(length)} already.");
            }

            if (!request.Has(fish.Confirm) && knowledge.Species.Has(entry.Species)
                && length.Length > Plausibility.LongestLength(knowledge.Species[entry.Species]))
            {
                return Reply.Refuse($"{words.Length(length)} is longer than any {words.SpeciesOf(entry)} one expects. If it is right, send it again with confirm:yes.");
            }

            await new LedgerRepository(session).AppendAsync(sheet.Derby.Number, at => new Amended(at, request.At, member.Id, number, length, reason));
            await posts.KeepAsync(session, sheet.Derby, request);
            return new Reply
            {
                Headline = $"Amended: {words.Entry(entry with { Measured = length }, sheet)}",
                Lines = [$"It said {words.Length(entry.Measured)}. Reason: {reason}. By {member.Name}; it is on the record."],
                Figures = [DerbyFigures.Number.Of(sheet.Derby.Number), DerbyFigures.Entry.Of(number), DerbyFigures.Scored.Of(sheet.Settings.Grid.Score(length, entry.Penalty))],
                Actions = [DerbyActions.Standings(sheet.Derby)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);
}
