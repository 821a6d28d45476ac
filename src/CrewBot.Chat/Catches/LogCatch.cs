using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch log</c>: stores one fish for whoever sent the request.</summary>
public sealed class LogCatch(CatchOptions options, CatchShorthand shorthand, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "catch log", "Log one fish; only the species is needed", "/catch log species:walleye length:22.5in depth:24ft fate:released",
        [options.Species, options.Ask, .. options.Details, options.Poster])
    {
        Writes = true,
        Shorthand = shorthand,
        Word = "log",
        OnMessage = new("Log this catch")
        {
            Text = options.Ask,
            Author = options.Poster,
            SentAt = options.When,
            Photo = options.Photo,
            Fields = [options.Species, options.Length, options.Weight, options.Depth, options.Note],
        },
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => LogAsync(request, session, member), cancellationToken);

    private async Task<Reply> LogAsync(Request request, CrewSession session, CrewMember member)
    {
        var catches = new CatchRepository(session);
        var waters = new WaterRepository(session);
        var down = await new LineSpellRepository(session).OpenOfAsync(member.Id) is [.., var newest] ? newest : null;
        var caughtAt = request.GetOr(options.When, new Moment(TimeSpan.Zero, 0, null, default)).From(request.At, request.Caller.Zone);
        var taken = new TakenOver(request, knowledge, down, await catches.LastOfAsync(member.Id), caughtAt);
        var water = request.TryGet(options.Water, out var named) ? named.Name : taken.Water();
        var place = await CatchPlace.FindAsync(waters, water, request.GetOr(options.Spot, null!));
        if (place.Fault is { } nowhere)
        {
            return Reply.Refuse(nowhere);
        }

        var species = request.Get(options.Species);
        var entry = Entry(request, taken, water, place.Value) with { MemberId = member.Id, CaughtAt = caughtAt };
        var confirmed = request.Has(options.Confirm);
        var fault = CatchDraft.FaultOf(entry, species, confirmed, request)
            ?? CatchDraft.TwiceOf(entry, await catches.NewestOfAsync(member.Id), confirmed);
        if (fault is not null)
        {
            return Reply.Refuse(fault);
        }

        if (!confirmed && entry.Photo is { } photo && await catches.FindByPhotoAsync(photo) is { } same)
        {
            return Reply.Refuse(
                $"That photo is logged already, as #{same.Number} for {same.Angler}. If it shows another fish, use /catch log with confirm:yes.");
        }

        var crewBest = await catches.LongestAsync(species.Key, memberId: null);
        var ownBest = await catches.LongestAsync(species.Key, member.Id);
<<<<<<< HEAD
        var number = await catches.AddAsync(entry);
        var water = (await catches.FindAsync(number))!.Water;
        var reply = new CatchAnswer(request, knowledge, species, entry).Of(number, "logged", water, crewBest, ownBest, assumed);
        return reply with
        {
            Lines = [.. reply.Lines, .. await WhoseAsync(request, session, number)],
            Actions = [.. Actions(request, number, down)],
        };
    }

    // A fish on somebody else's photo is logged for whoever logs it: nobody enters another's catch in silence.
    private async Task<IEnumerable<string>> WhoseAsync(Request request, CrewSession session, long number)
    {
        if (!request.TryGet(options.Poster, out var poster) || poster.Id == request.Caller.Member)
        {
            return [];
        }

        var name = (await new MemberRepository(session).FindAsync(poster.Id))?.Name ?? "somebody else";
        return [$"Logged as {request.Caller.Name}'s; {name} posted it. If it is their fish, /catch void catch:{number} and let them log it."];
    }

    private IEnumerable<ReplyAction> Actions(Request request, long number, LineSpell? down)
    {
        var entry = new Dictionary<string, string> { [options.Number.Name] = $"{number}" };
        var lines = new[] { options.Presentation.Name, options.Water.Name }
            .Where(request.Written.ContainsKey)
            .ToDictionary(name => name, name => request.Written[name]);
        yield return down is null ? new("Lines down", ActionKind.Run, "lines down", lines) : new("Lines up", ActionKind.Run, "lines up");
        yield return ReplyAction.Form("Correct it", "catch edit", entry, options.Length, options.Weight, options.Depth, options.Lure, options.Note);
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
            Depth = Or(options.Depth, Given(request, options.Depth), before?.Entry.Depth, depth => CatchWords.Depth(depth!.Value, request)),
            Presentation = Or(
                options.Presentation, request.GetOr(options.Presentation, null!)?.Key, down?.Presentation ?? before?.Entry.Presentation,
                key => CatchWords.PresentationOf(key, knowledge)),
            Lure = request.GetOr(options.Lure, null!),
            Mood = Or(
                options.Mood, request.TryGet(options.Mood, out var mood) ? mood.ToString().ToLowerInvariant() : null, before?.Entry.Mood,
                word => $"{word} mood"),
            Line = request.TryGet(options.Line, out var line) ? line : null,
            Kept = request.TryGet(options.Fate, out var kept) ? kept : null,
            Note = request.GetOr(options.Note, null!),
            Photo = request.TryGet(options.Photo, out var photo) ? photo.Reference : null,
=======
        var logged = (await catches.FindAsync(await catches.AddAsync(entry)))!;
        var answer = new CatchAnswer(request, knowledge, species, entry)
        {
            Rules = await KeepingCheck.OfAsync(session, logged, species, request),
            LinesAreDown = down is not null,
>>>>>>> main
        };
        return answer.Of(logged, crewBest, ownBest, taken.Named);
    }

    private CatchEntry Entry(Request request, TakenOver taken, string? water, CatchPlace place) => new()
    {
        MemberId = 0,
        Species = request.Get(options.Species).Key,
        CaughtAt = request.At,
        LoggedAt = request.At,
        Length = Given(request, options.Length),
        Weight = Given(request, options.Weight),
        Girth = Given(request, options.Girth),
        WaterId = place.WaterId,
        SpotId = place.SpotId,
        Depth = Given(request, options.Depth) ?? taken.Depth(water),
        Presentation = request.GetOr(options.Presentation, null!)?.Key ?? taken.Presentation(water),
        Lure = request.GetOr(options.Lure, null!),
        Mood = request.TryGet(options.Mood, out var mood) ? mood.ToString().ToLowerInvariant() : taken.Mood(request.Get(options.Species).Key, water),
        Line = request.TryGet(options.Line, out var line) ? line : null,
        Kept = request.TryGet(options.Fate, out var kept) ? kept : null,
        Note = request.GetOr(options.Note, null!),
        Photo = request.GetOr(options.Photo, null!),
    };

    private static T? Given<T>(Request request, CommandOption<T> option)
        where T : struct =>
        request.TryGet(option, out var value) ? value : null;
}
