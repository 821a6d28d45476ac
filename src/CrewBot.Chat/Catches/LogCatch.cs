using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch log</c>: stores one fish for whoever sent the request.</summary>
public sealed class LogCatch(CatchOptions options, CatchShorthand shorthand, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    // What held at one fish is taken to hold at the next only on the same day out.
    private static readonly TimeSpan SameOuting = TimeSpan.FromHours(12);

    public CommandInfo Info { get; } = new(
        "catch log", "Log one fish; only the species is needed", "/catch log species:walleye length:22.5in depth:24ft fate:released",
        [options.Species, options.Ask, .. options.Details])
    {
        Writes = true,
        Shorthand = shorthand,
        Word = "log",
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => LogAsync(request, session, member), cancellationToken);

    private async Task<Reply> LogAsync(Request request, CrewSession session, CrewMember member)
    {
        var catches = new CatchRepository(session);
        var species = request.Get(options.Species);
        var last = await catches.LastOfAsync(member.Id);
        var down = await new LineSpellRepository(session).OpenOfAsync(member.Id) is [.., var newest] ? newest : null;
        var assumed = new List<string>();
        var entry = await EntryAsync(request, session, member, last, down, assumed);
        var confirmed = request.Has(options.Confirm);
        if ((CatchDraft.FaultOf(entry, species, confirmed, request) ?? CatchDraft.TwiceOf(entry, last, confirmed)) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var crewBest = await catches.LongestAsync(species.Key, memberId: null);
        var ownBest = await catches.LongestAsync(species.Key, member.Id);
        var number = await catches.AddAsync(entry);
        var water = (await catches.FindAsync(number))!.Water;
        return new CatchAnswer(request, knowledge, species, entry).Of(number, "logged", water, crewBest, ownBest, assumed);
    }

    private async Task<CatchEntry> EntryAsync(
        Request request, CrewSession session, CrewMember member, LoggedCatch? last, LineSpell? down, List<string> assumed)
    {
        var caughtAt = request.GetOr(options.When, new Moment(TimeSpan.Zero, 0, null, default)).From(request.At, request.Caller.Zone);
        var before = last is not null && (caughtAt - last.Entry.CaughtAt).Duration() < SameOuting ? last : null;
        T? Or<T>(CommandOption option, T? given, T? otherwise, Func<T, string> named)
        {
            if (request.Has(option) || otherwise is null)
            {
                return given;
            }

            assumed.Add(named(otherwise));
            return otherwise;
        }

        var waters = new WaterRepository(session);
        long? given = request.TryGet(options.Water, out var water) ? await waters.FindAsync(water.Name) ?? await waters.AddAsync(water.Name) : null;
        var known = down?.Water is { } lying ? (lying, await waters.FindAsync(lying)) : (before?.Water ?? "", before?.Entry.WaterId);
        return new CatchEntry
        {
            MemberId = member.Id,
            Species = request.Get(options.Species).Key,
            CaughtAt = caughtAt,
            LoggedAt = request.At,
            Length = Given(request, options.Length),
            Weight = Given(request, options.Weight),
            Girth = Given(request, options.Girth),
            WaterId = Or(options.Water, given, known.Item2, _ => known.Item1),
            Depth = Or(options.Depth, Given(request, options.Depth), down?.Depth ?? before?.Entry.Depth, depth => CatchWords.Depth(depth!.Value, request)),
            Presentation = Or(
                options.Presentation, request.GetOr(options.Presentation, null!)?.Key, down?.Presentation ?? before?.Entry.Presentation,
                key => CatchWords.PresentationOf(key, knowledge)),
            Lure = request.GetOr(options.Lure, null!),
            Mood = Or(
                options.Mood, request.TryGet(options.Mood, out var mood) ? mood.ToString().ToLowerInvariant() : null, down?.Mood ?? before?.Entry.Mood,
                word => $"{word} mood"),
            Line = request.TryGet(options.Line, out var line) ? line : null,
            Kept = request.TryGet(options.Fate, out var kept) ? kept : null,
            Note = request.GetOr(options.Note, null!),
            Photo = request.GetOr(options.Photo, null!),
        };
    }

    private static T? Given<T>(Request request, CommandOption<T> option)
        where T : struct =>
        request.TryGet(option, out var value) ? value : null;
}
