using CrewBot.Chat.Commands;
using CrewBot.Chat.Photos;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch edit</c>: corrects an entry; what it said before is kept.</summary>
public sealed class EditCatch(CatchOptions options, TradeKnowledge knowledge, CrewBook book, PhotoDesk photos) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "catch edit", "Correct an entry of yours; what it said before is kept", "/catch edit catch:41 length:22.25in",
        [options.Number, options.OtherSpecies, .. options.Details])
    {
        AlsoSaid = ["correct", "catch correct", "catch fix", "catch change", "catch amend"],
        FromAnywhere = true,
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => photos.WithPhotoAsync(
        request,
        options.Photo,
        photo => book.WriteOnceAsync(request, (session, member) => EditAsync(request, photo, session, member), cancellationToken),
        cancellationToken);

    private async Task<Reply> EditAsync(Request request, TakenPhoto? photo, CrewSession session, CrewMember member)
    {
        var catches = new CatchRepository(session);
        var number = request.Get(options.Number);
        var before = await catches.FindAsync(number);
        if (EntryRights.FaultOf(before, number, member, request) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var place = await PlaceAsync(request, session, before!);
        if (place.Fault is { } nowhere)
        {
            return Reply.Refuse(nowhere);
        }

        var entry = Changed(request, photo, before!.Entry) with { WaterId = place.Value.WaterId, SpotId = place.Value.SpotId };
        if (entry == before.Entry)
        {
            return Reply.Refuse($"#{number} says that already: give what is to change.");
        }

        if (!knowledge.Species.Has(entry.Species))
        {
            return Reply.Refuse($"{Quoting.Quote(entry.Species)} is not known here any more: say with species what it is.");
        }

        var species = knowledge.Species[entry.Species];
        if (CatchDraft.FaultOf(entry, species, request.Has(options.Confirm), request) is { } odd)
        {
            return Reply.Refuse(odd);
        }

        await catches.ReplaceAsync(before, entry, member.Id, request.At);
        var after = (await catches.FindAsync(number))!;
        return new Reply
        {
            Headline = $"Corrected {CatchWords.Row(after, knowledge, request)}",
            Lines = [$"It said {CatchWords.Row(before, knowledge, request)}.", .. PhotoDesk.Remarks(photo), .. await InDerbiesAsync(session, number)],
            Figures = [CatchFigures.Number.Of(number), .. entry.Length is { } length ? (Figure[])[CatchFigures.Length.Of(length)] : []],
            Audience = Audience.Crew,
        };
    }

    // What was witnessed is not lengthened afterwards.
    private static async Task<IEnumerable<string>> InDerbiesAsync(CrewSession session, long number) =>
        (await new LedgerRepository(session).EntriesAsync(number)).TakeLast(1)
            .Select(entry => $"In derby {entry.Derby} it stays as it was entered: a steward changes it with /derby amend entry:{entry.Entry}.");

    // Another water leaves the spot of the one before behind.
    private Task<Reading<CatchPlace>> PlaceAsync(Request request, CrewSession session, LoggedCatch before)
    {
        var water = request.TryGet(options.Water, out var named) ? named.Name : before.Water;
        return CatchPlace.FindAsync(
            new WaterRepository(session), water, request.TryGet(options.Spot, out var spot) ? spot : water == before.Water ? before.Spot : null);
    }

    private CatchEntry Changed(Request request, TakenPhoto? photo, CatchEntry entry) => entry with
    {
        Species = request.TryGet(options.OtherSpecies, out var species) ? species.Key : entry.Species,
        Length = request.TryGet(options.Length, out var length) ? length : entry.Length,
        Weight = request.TryGet(options.Weight, out var weight) ? weight : entry.Weight,
        Girth = request.TryGet(options.Girth, out var girth) ? girth : entry.Girth,
        Depth = request.TryGet(options.Depth, out var depth) ? depth : entry.Depth,
        Presentation = request.TryGet(options.Presentation, out var presentation) ? presentation.Key : entry.Presentation,
        Lure = request.GetOr(options.Lure, entry.Lure!),
        Mood = request.TryGet(options.Mood, out var mood) ? mood.ToString().ToLowerInvariant() : entry.Mood,
        Line = request.TryGet(options.Line, out var line) ? line : entry.Line,
        Kept = request.TryGet(options.Fate, out var kept) ? kept : entry.Kept,
        CaughtAt = request.TryGet(options.When, out var when) ? when.From(request.At, request.Caller.Zone) : entry.CaughtAt,
        Note = request.GetOr(options.Note, entry.Note!),
        Photo = photo is null ? entry.Photo : photo.Reference,
        PhotoHash = photo is null ? entry.PhotoHash : photo.Hash,
    };
}
