using System.Security.Cryptography;
using System.Text;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Chat.Photos;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby enter</c>: enters a fish of the log, or logs one and enters it.</summary>
public sealed class EnterDerby(DerbyOptions options, CatchOptions fish, CatchShorthand shorthand, TradeKnowledge knowledge, CrewBook book, PhotoDesk photos, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "derby enter", "Enter a fish: your last, one of your log, or a new one", "/derby enter species:walleye length:22.5in fate:released",
        [options.Catch, fish.Ask, fish.OtherSpecies, .. fish.Details, options.Derby])
    {
        AlsoSaid = ["weigh", "weigh in", "weigh-in", "weighin", "derby weigh", "derby weigh in", "derby weigh-in", "derby weighin", "derby add", "derby log", "derby submit"],
        Writes = true,
        Shorthand = shorthand,
        OnMessage = new MessageMenu("Enter in derby")
        {
            Text = fish.Ask,
            SentAt = fish.When,
            Photo = fish.Photo,
            Fields = [fish.OtherSpecies, fish.Length, fish.Fate, fish.When, fish.Water],
        },
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => photos.WithPhotoAsync(
        request,
        fish.Photo,
        photo => book.WriteOnceAsync(request, (session, member) => EnterAsync(request, photo, session, member), cancellationToken),
        cancellationToken);

    private async Task<Reply> EnterAsync(Request request, TakenPhoto? photo, CrewSession session, CrewMember member)
    {
        var found = await DerbyFinder.FindAsync(request, options, session, member.Id);
        if (found.Fault is { } none)
        {
            return Reply.Refuse(none);
        }

        var derby = found.Value!;
        if (derby.IsClosed)
        {
            return Reply.Refuse($"{derby.Name} is closed: ask a steward to reopen it.");
        }

        if (!derby.HasJoined)
        {
            return Reply.Refuse($"You are not in {derby.Name} yet: say /derby join, then enter it again.") with { Actions = [DerbyActions.Join(derby)] };
        }

        var caught = await FishAsync(request, photo, session, derby, member);
        if ((caught.Fault ?? await FaultOfAsync(request, session, derby, caught.Value!, member)) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        return await WriteAsync(request, photo, session, derby, caught.Value!, member);
    }

    private async Task<Reading<LoggedCatch>> FishAsync(Request request, TakenPhoto? photo, CrewSession session, Derby derby, CrewMember member)
    {
        var catches = new CatchRepository(session);
        if (request.TryGet(options.Catch, out var number))
        {
            return await catches.FindAsync(number) is { } logged ? logged : new Misread($"There is no #{number} in this crew's log. /catch list shows the newest.");
        }

        if (!request.TryGet(fish.OtherSpecies, out var species))
        {
            // What was said is of a new fish: the last of the log would be another one.
            if (fish.Details.Any(detail => detail != fish.Confirm && request.Has(detail)))
            {
                return new Misread("Which fish is it? Give its species too, such as /derby enter species:walleye length:22.5in");
            }

            return await catches.LastOfAsync(member.Id) is { } last
                ? last
                : new Misread("You have logged no fish yet. Give it here, such as /derby enter species:walleye length:22.5in");
        }

        return await new NewCatch(fish).AddAsync(request, photo, session, derby, member, species);
    }

    private async Task<string?> FaultOfAsync(Request request, CrewSession session, Derby derby, LoggedCatch caught, CrewMember member)
    {
        if (caught.Entry.MemberId != member.Id)
        {
            return $"#{caught.Number} is {caught.Angler}'s: they enter it themselves.";
        }

        if (new EntryCheck(derby, knowledge).FaultOf(caught, request.At) is { } fault)
        {
            return fault;
        }

        var ledger = new LedgerRepository(session);
        if (await ledger.OfCatchAsync(derby.Number, caught.Number) is { } same)
        {
            return $"#{caught.Number} is in {derby.Name} already, as entry {same}.";
        }

        if (HashOf(caught) is { } hash && await ledger.OfPhotoAsync(derby.Number, hash) is { } shown)
        {
            return $"That photo is in {derby.Name} already, with entry {shown}. If it is another fish, correct the photo with /catch edit.";
        }

        return derby.Settings.Limits.MostEntries is { } most && await ledger.CountAsync(derby.Number, member.Id) >= most
            ? $"You have entered {most} fish, the most in {derby.Name}."
            : null;
    }

    private async Task<Reply> WriteAsync(Request request, TakenPhoto? photo, CrewSession session, Derby derby, LoggedCatch caught, CrewMember member)
    {
        var (entry, hash) = (caught.Entry, HashOf(caught));
        var length = entry.Length!.Value;
        var number = await new LedgerRepository(session).EnterAsync(
            derby.Number,
            (at, place) => new Entered(at, request.At, member.Id, place, member.Id)
            {
                Catch = caught.Number,
                Species = entry.Species,
                Measured = length,
                CaughtAt = entry.CaughtAt,
                Weight = entry.Weight,
                Water = caught.Water,
                Kept = entry.Kept,
                HasPhoto = hash is not null,
            },
            hash);
        await posts.KeepAsync(session, derby, request);
        var words = new DerbyWords(derby, knowledge);
        var scored = derby.Settings.Grid.Score(length);
        return new Reply
        {
            Headline = $"Entry {number} in {derby.Name}: {CatchWords.NameOf(entry.Species, knowledge)}, {words.Length(scored)}, {member.Name}",
            Lines = [.. Lines(request, derby, caught, words), .. PhotoDesk.Remarks(photo)],
            Figures = [DerbyFigures.Number.Of(derby.Number), DerbyFigures.Entry.Of(number), CatchFigures.Number.Of(caught.Number), DerbyFigures.Scored.Of(scored)],
            Cautions = request.TryGet(fish.Air, out var air) && ColdPhoto.CautionFor(entry.Kept, air, request.Show) is { } cold ? [cold] : [],
            Actions = [DerbyActions.Saw(derby, number), DerbyActions.Standings(derby)],
            Audience = Audience.Crew,
        };
    }

    private static IEnumerable<string> Lines(Request request, Derby derby, LoggedCatch caught, DerbyWords words)
    {
        var (settings, length) = (derby.Settings, caught.Entry.Length!.Value);
        if (!settings.Grid.IsOnLine(length))
        {
            yield return $"Measured {words.Length(length)}: rounded {settings.Grid.Rounding switch { Rounding.Down => "down", Rounding.Up => "up", _ => "to the nearest" }} to {words.Length(settings.Grid.Score(length))}, in steps of {words.Length(settings.Grid.Step)}.";
        }

        var isLate = request.At > settings.Window.Ends;
        yield return $"Caught {words.Time(caught.Entry.CaughtAt, request.At)}, received {words.Time(request.At, request.At)}{(isLate ? ", after the end" : "")}.";
        yield return request.At > settings.Window.LastWord ? "Word of it came after the grace time: a steward decides."
            : settings.Evidence == Evidence.Crewmate ? "It counts once a crewmate taps I saw it."
            : settings.Evidence == Evidence.Photo && caught.Entry.Photo is null ? "There is no photo: a steward decides."
            : isLate ? "It counts, marked as late."
            : "It counts.";
    }

    // A platform signs its links anew each time: what follows the question mark is not the photo.
    private static string? HashOf(LoggedCatch caught) => caught.Entry.PhotoHash is { } hash ? hash
        : caught.Entry.Photo is { } photo ? Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(photo.Split('?')[0]))) : null;
}
