using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby saw</c>, the button "I saw it": a crewmate's word for a fish.</summary>
public sealed class WitnessEntry(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby saw", "Give your word for a crewmate's fish", "/derby saw entry:4", [options.Entry, options.Derby]) { Writes = true };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var found = await DerbyFinder.FindOnlyAsync(request, options, session, member.Id, derby => !derby.IsClosed && DerbyFinder.HasBegun(derby, request.At));
            if (found.Fault is { } none)
            {
                return Reply.Refuse(none);
            }

            var (derby, number, ledger) = (found.Value!, request.Get(options.Entry), new LedgerRepository(session));
            var entry = await ledger.FindAsync(derby.Number, number);
            var fault = entry is null ? $"There is no entry {number} in {derby.Name}. /derby rulings and /derby angler show numbers."
                : entry.Angler == member.Id ? "Nobody can be the witness of their own fish: whoever stood beside you taps I saw it."
                : derby.IsClosed ? $"{derby.Name} is closed: ask a steward to reopen it."
                : entry.Witness is not null ? $"Somebody has given their word for entry {number} already."
                : null;
            if (fault is not null)
            {
                return Reply.Refuse(fault);
            }

            await ledger.AppendAsync(derby.Number, at => new Witnessed(at, request.At, member.Id, number));
            await posts.KeepAsync(session, derby, request);
            return new Reply
            {
                Headline = $"{member.Name} saw entry {number} in {derby.Name}: {CatchWords.NameOf(entry!.Species, knowledge)}, {new DerbyWords(derby, knowledge).Length(derby.Settings.Grid.Score(entry.Measured, entry.Penalty))}",
                Figures = [DerbyFigures.Number.Of(derby.Number), DerbyFigures.Entry.Of(number)],
                Actions = [DerbyActions.Standings(derby)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);
}
