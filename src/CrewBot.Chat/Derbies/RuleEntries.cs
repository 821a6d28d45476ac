using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby rulings</c>: what waits for a steward, and the ruling on it.</summary>
public sealed class RuleEntries(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards, DerbyPosts posts) : ICommandHandler
{
    private const int MostShown = 7;
    private const int MostWithButtons = 3;

    public CommandInfo Info { get; } = new(
        "derby rulings", "What waits for a steward; accept, refuse or ask who saw it", "/derby rulings entry:4 ruling:refuse reason:\"no one saw it\"",
        [options.OneEntry, options.Ruling, options.RulingReason, options.Derby])
    {
        Writes = true,
        Role = Role.Steward,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        request.Has(options.OneEntry) != request.Has(options.Ruling)
            ? Reply.Refuse("An entry and a ruling go together, such as entry:4 ruling:accept")
            : request.TryGet(options.OneEntry, out var number)
                ? await book.WriteOnceAsync(request, (session, member) => RuleAsync(request, session, member, number), cancellationToken)
                : await book.ReadAsync(request, session => ListAsync(request, session), cancellationToken);

    private async Task<Reply> ListAsync(Request request, CrewSession session)
    {
        var found = await DerbyFinder.FindAsync(request, options, session, memberId: null);
        if (found.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var sheet = await boards.SheetAsync(session, found.Value!, request);
        var words = new DerbyWords(sheet.Derby, knowledge);
        var waiting = sheet.Standings.Out.Where(gone => gone.Why is OutReason.Waiting or OutReason.Disputed or OutReason.Late).ToList();
        return new Reply
        {
            Headline = waiting.Count == 0 ? $"Nothing waits in {sheet.Derby.Name}" : $"{Counted.Of(waiting.Count, "entry waits", "entries wait")} in {sheet.Derby.Name}",
            Lines = [.. waiting.Take(MostShown).Select(gone => $"{CatchWords.Sentence(words.Entry(gone.Entry, sheet))}: {words.Why(gone)}{(gone.Entry.HasPhoto ? "; there is a photo" : "")}.")],
            Figures = [DerbyFigures.Number.Of(sheet.Derby.Number), DerbyFigures.Waiting.Of(waiting.Count)],
            Actions =
            [
                .. waiting.Take(MostWithButtons).Select(gone => gone.Entry.Number).SelectMany(entry => (ReplyAction[])
                [
                    DerbyActions.Accept(sheet.Derby, entry), DerbyActions.Refuse(sheet.Derby, entry, options), DerbyActions.WhoSaw(sheet.Derby, entry),
                ]),
            ],
        };
    }

    private async Task<Reply> RuleAsync(Request request, CrewSession session, CrewMember member, int number)
    {
        var opened = await StewardDesk.OpenAsync(request, options, session, member, boards, number);
        if (opened.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var (sheet, entry) = opened.Value!;
        var words = new DerbyWords(sheet.Derby, knowledge);
        var why = sheet.Standings.Out.FirstOrDefault(gone => gone.Entry.Number == number)?.Why;
        var ruling = request.Get(options.Ruling);
        if (ruling == EntryRuling.Ask)
        {
            return why == OutReason.Waiting ? Asked(sheet, entry, words) : Reply.Refuse($"Entry {number} does not wait for anybody's word.");
        }

        if (ruling == EntryRuling.Refuse && !request.Has(options.RulingReason))
        {
            return Reply.Refuse($"A refusal needs its reason, such as /derby rulings entry:{number} ruling:refuse reason:\"no one saw it\"");
        }

        if (FaultOf(ruling, why, sheet, entry, words) is { } undecidable)
        {
            return Reply.Refuse(undecidable);
        }

        var accepts = ruling == EntryRuling.Accept;
        var reason = request.GetOr(options.RulingReason, "accepted");
        await new LedgerRepository(session).AppendAsync(sheet.Derby.Number, at =>
            entry.IsDisputed ? new Ruled(at, request.At, member.Id, number, accepts, reason)
            : accepts ? new Accepted(at, request.At, member.Id, number)
            : new Refused(at, request.At, member.Id, number, reason));
        await posts.KeepAsync(session, sheet.Derby, request);
        return new Reply
        {
            Headline = $"{(accepts ? "Accepted" : "Refused")}: {words.Entry(entry, sheet)}",
            Lines = [$"{(entry.IsDisputed ? $"The protest ({entry.Reason}) is {(accepts ? "overruled" : "upheld")}. " : "")}{(request.Has(options.RulingReason) ? $"Reason: {reason}. " : "")}Ruled by {member.Name}; it is on the record."],
            Figures = [DerbyFigures.Number.Of(sheet.Derby.Number), DerbyFigures.Entry.Of(number)],
            Actions = [DerbyActions.Standings(sheet.Derby)],
            Audience = Audience.Crew,
        };
    }

    private static string? FaultOf(EntryRuling ruling, OutReason? why, DerbySheet sheet, EntryState entry, DerbyWords words) => why switch
    {
        null when ruling == EntryRuling.Accept => $"Entry {entry.Number} counts already.",
        OutReason.Refused when ruling == EntryRuling.Refuse => $"Entry {entry.Number} is refused already.",
        OutReason.Withdrawn or OutReason.Void or OutReason.AnglerLeft or OutReason.OutsideWindow when ruling == EntryRuling.Accept =>
            $"Entry {entry.Number} can't count: {words.Why(sheet.Standings.Out.First(gone => gone.Entry.Number == entry.Number))}.",
        _ => null,
    };

    private static Reply Asked(DerbySheet sheet, EntryState entry, DerbyWords words) => new()
    {
        Headline = $"Who saw {words.Entry(entry, sheet)}?",
        Lines = ["Whoever stood beside taps I saw it; then it counts."],
        Figures = [DerbyFigures.Number.Of(sheet.Derby.Number), DerbyFigures.Entry.Of(entry.Number)],
        Actions = [DerbyActions.Saw(sheet.Derby, entry.Number)],
        Audience = Audience.Crew,
    };
}
