using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Photos;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>A fish told only to the derby: it goes into the log as it was told, with nothing taken over from before.</summary>
internal sealed class NewCatch(CatchOptions options)
{
    /// <returns>The fish in the log, or in a line why it is not logged.</returns>
    public async Task<Reading<LoggedCatch>> AddAsync(
        Request request, TakenPhoto? photo, CrewSession session, Derby derby, CrewMember member, Species species)
    {
        var catches = new CatchRepository(session);
        var (entry, confirmed) = (await OfAsync(request, photo, session, member, species), request.Has(options.Confirm));
        if ((entry.Fault ?? CatchDraft.FaultOf(entry.Value!, species, confirmed, request)) is { } odd)
        {
            return new Misread(odd);
        }

        // Refused later, it would not be in the log, where the derby would have it corrected.
        if (entry.Value!.Length is null)
        {
            return new Misread("No length in that. Give it with its unit, such as length:22.5in");
        }

        // A photo tells two fish apart.
        if (photo is null && CatchDraft.TwiceOf(entry.Value!, await catches.NewestOfAsync(member.Id, request.At - CatchDraft.SameFishWithin), confirmed) is { } twice)
        {
            return new Misread(twice);
        }

        // One that is in the derby already is refused as such.
        if (photo is not null && !confirmed && await catches.FindByPhotoAsync(photo.Reference, photo.Hash) is { } same
            && await new LedgerRepository(session).OfCatchAsync(derby.Number, same.Number) is null)
        {
            return new Misread(
                $"That photo is logged already, as #{same.Number} for {same.Angler}: /derby enter catch:{same.Number} enters that fish. If it shows another, send it again with confirm:yes.");
        }

        return (await catches.FindAsync(await catches.AddAsync(entry.Value!)))!;
    }

    private async Task<Reading<CatchEntry>> OfAsync(Request request, TakenPhoto? photo, CrewSession session, CrewMember member, Species species)
    {
        var water = request.TryGet(options.Water, out var named) ? named.Name : null;
        var place = await CatchPlace.FindAsync(new WaterRepository(session), water, request.GetOr(options.Spot, null!));
        if (place.Fault is { } nowhere)
        {
            return new Misread(nowhere);
        }

        T? Given<T>(CommandOption<T> option)
            where T : struct =>
            request.TryGet(option, out var value) ? value : null;

        return new CatchEntry
        {
            MemberId = member.Id,
            Species = species.Key,
            CaughtAt = request.GetOr(options.When, Moment.Now).From(request.At, request.Caller.Zone),
            LoggedAt = request.At,
            Length = Given(options.Length),
            Weight = Given(options.Weight),
            Girth = Given(options.Girth),
            WaterId = place.Value.WaterId,
            SpotId = place.Value.SpotId,
            Depth = Given(options.Depth),
            Presentation = request.TryGet(options.Presentation, out var presentation) ? presentation.Key : null,
            Lure = request.GetOr(options.Lure, null!),
            Mood = request.TryGet(options.Mood, out var mood) ? mood.ToString().ToLowerInvariant() : null,
            Line = Given(options.Line),
            Kept = Given(options.Fate),
            Note = request.GetOr(options.Note, null!),
            Photo = photo?.Reference,
            PhotoHash = photo?.Hash,
        };
    }
}
