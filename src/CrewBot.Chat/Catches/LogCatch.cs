using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies;
using CrewBot.Chat.Photos;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch log</c>: stores one fish for whoever sent the request.</summary>
public sealed class LogCatch(CatchOptions options, CatchShorthand shorthand, TradeKnowledge knowledge, CrewBook book, PhotoDesk photos)
    : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "catch log", "Log one fish; only the species is needed", "/catch log species:walleye length:22.5in depth:24ft fate:released",
        [options.Species, options.Ask, .. options.Details, options.Poster])
    {
        FromAnywhere = true,
        Writes = true,
        Shorthand = shorthand,
        Word = "log",
        Found = options.Species,
        OnMessage = new("Log this catch")
        {
            Text = options.Ask,
            Author = options.Poster,
            SentAt = options.When,
            Photo = options.Photo,
            Fields = [options.Species, options.Length, options.Weight, options.Depth, options.Note],
        },
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => photos.WithPhotoAsync(
        request,
        options.Photo,
        photo => book.WriteOnceAsync(request, (session, member) => LogAsync(request, photo, session, member), cancellationToken),
        cancellationToken);

    private async Task<Reply> LogAsync(Request request, TakenPhoto? photo, CrewSession session, CrewMember member)
    {
        var catches = new CatchRepository(session);
        var draft = await DraftAsync(request, photo, session, member, catches);
        var fault = draft.Fault ?? await FaultOfAsync(request, draft.Value!, photo, catches);
        return fault is null ? await AddAsync(request, draft.Value!, photo, session, member, catches) : Reply.Refuse(fault);
    }

    private async Task<Reading<Draft>> DraftAsync(
        Request request, TakenPhoto? photo, CrewSession session, CrewMember member, CatchRepository catches)
    {
        var down = await new LineSpellRepository(session).OpenOfAsync(member.Id) is [.., var newest] ? newest : null;
        var caughtAt = request.GetOr(options.When, Moment.Now).From(request.At, request.Caller.Zone);
        var taken = new TakenOver(request, knowledge, down, await catches.LastCaughtAsync(member.Id), await TripToday.FindAsync(session, member, caughtAt), caughtAt);
        if (request.GetOr(options.Species, null!) is not { } species && (species = taken.Species()!) is null)
        {
            return new Misread(RequestReading.Missing(options.Species, request.Expansion, request.Caller));
        }

        var water = request.TryGet(options.Water, out var named) ? named.Name : taken.Water();
        var place = await CatchPlace.FindAsync(new WaterRepository(session), water, request.GetOr(options.Spot, null!));
        if (place.Fault is { } nowhere)
        {
            return new Misread(nowhere);
        }

        var entry = Entry(request, taken, species.Key, water, place.Value) with
        {
            MemberId = member.Id,
            CaughtAt = caughtAt,
            Photo = photo?.Reference,
            PhotoHash = photo?.Hash,
        };
        return new Draft(species, entry, place.Value, taken, LinesAreDown: down is not null);
    }

    private async Task<string?> FaultOfAsync(Request request, Draft draft, TakenPhoto? photo, CatchRepository catches)
    {
        var (entry, confirmed) = (draft.Entry, request.Has(options.Confirm));
        var fault = CatchDraft.FaultOf(entry, draft.Species, confirmed, request)
            ?? CatchDraft.TwiceOf(entry, await catches.NewestOfAsync(entry.MemberId, request.At - CatchDraft.SameFishWithin), confirmed);
        return fault is null && !confirmed && photo is not null && await catches.FindByPhotoAsync(photo.Reference, photo.Hash) is { } same
            ? $"That photo is logged already, as #{same.Number} for {same.Angler}. If it shows another fish, use /catch log with confirm:yes."
            : fault;
    }

    private async Task<Reply> AddAsync(
        Request request, Draft draft, TakenPhoto? photo, CrewSession session, CrewMember member, CatchRepository catches)
    {
        var (species, entry, place) = (draft.Species, draft.Entry, draft.Place);
        var crewBest = entry.Length is null ? null : await catches.LongestAsync(species.Key, memberId: null);
        var ownBest = entry.Length is null ? null : await catches.LongestAsync(species.Key, member.Id);
        var number = await catches.AddAsync(entry);
        var logged = place.SpotId is null
            ? new LoggedCatch(number, member.Name, place.Water, IsVoid: false, entry) { AnglerId = member.PlatformId }
            : (await catches.FindAsync(number))!;
        var answer = new CatchAnswer(request, knowledge, species, entry)
        {
            Rules = await KeepingCheck.OfAsync(session, logged, species, request),
            LinesAreDown = draft.LinesAreDown,
        };
        var reply = answer.Of(logged, crewBest, ownBest, draft.Taken.Named);
        return reply with
        {
            Lines = [.. reply.Lines, .. PhotoDesk.Remarks(photo), .. await WhoseAsync(request, session, logged.Number)],
            Actions = [.. reply.Actions, .. await EntryCheck.OffersAsync(request, session, logged, knowledge), Correction(logged.Number)],
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

    private ReplyAction Correction(long number) => ReplyAction.Form(
        "Correct it", "catch edit", new Dictionary<string, string> { [options.Number.Name] = $"{number}" },
        options.Length, options.Weight, options.Depth, options.Lure, options.Note);

    private CatchEntry Entry(Request request, TakenOver taken, string species, string? water, CatchPlace place) => new()
    {
        MemberId = 0,
        Species = species,
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
        Mood = request.TryGet(options.Mood, out var mood) ? mood.ToString().ToLowerInvariant() : taken.Mood(species, water),
        Line = request.TryGet(options.Line, out var line) ? line : null,
        Kept = request.TryGet(options.Fate, out var kept) ? kept : null,
        Note = request.GetOr(options.Note, null!),
    };

    private static T? Given<T>(Request request, CommandOption<T> option)
        where T : struct =>
        request.TryGet(option, out var value) ? value : null;

    /// <summary>A fish as it would be logged.</summary>
    /// <param name="Species">What it is.</param>
    /// <param name="Entry">Its entry.</param>
    /// <param name="Place">Where it was caught.</param>
    /// <param name="Taken">What was taken over from before.</param>
    /// <param name="LinesAreDown">Whether its angler has lines in the water.</param>
    private sealed record Draft(Species Species, CatchEntry Entry, CatchPlace Place, TakenOver Taken, bool LinesAreDown);
}
