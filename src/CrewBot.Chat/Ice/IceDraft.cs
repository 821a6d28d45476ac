using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Makes an entry of what a request says. What nobody said stays unknown.</summary>
internal sealed class IceDraft(IceOptions options, Request request)
{
    private static readonly TimeSpan ClockSlack = TimeSpan.FromMinutes(5);

    private bool SaysIce => request.Has(options.Holes) || request.Has(options.Clear) || request.Has(options.White) || request.Has(options.Total);

    private bool Quotes => request.Has(options.Author) || request.Has(options.Link) || request.Has(options.Quote) || request.Has(options.Written);

    /// <summary>A new entry, or in a line what is wrong with it.</summary>
    public Reading<IceEntry> New(long member, long water) => Checked(With(new IceEntry(member, water, request.At, new IcePage())
    {
        // A measurement of one's own is of now; somebody else's says when or does not.
        MeasuredAt = Quotes || request.GetOr(options.Hearsay, false) ? null : request.At,
    }));

    /// <summary>An entry with what the request says in place of what it said.</summary>
    public Reading<IceEntry> Correcting(IceEntry entry) => Checked(With(entry));

    private IceEntry With(IceEntry entry) => entry with
    {
        Spot = request.GetOr(options.Spot, null!) ?? entry.Spot ?? request.GetOr(options.From, null!),
        MeasuredAt = request.TryGet(options.When, out var when) ? when.From(request.At, request.Caller.Zone) : entry.MeasuredAt,
        Page = entry.Page with
        {
            Holes = SaysIce ? HolesSaid() : entry.Page.Holes,
            From = request.GetOr(options.From, null!) ?? entry.Page.From,
            Hazards = request.TryGet(options.Hazard, out var hazards) ? [.. hazards.Distinct()] : entry.Page.Hazards,
            Snow = Thickness(options.Snow) ?? entry.Page.Snow,
            Slush = Thickness(options.Slush) ?? entry.Page.Slush,
            Air = request.TryGet(options.Air, out var air) ? air.DegreesCelsius : entry.Page.Air,
            Note = request.GetOr(options.Note, null!) ?? entry.Page.Note,
            Photo = request.TryGet(options.Photo, out var photo) ? photo.Reference : entry.Page.Photo,
            Quote = Quotes ? new IceQuote(request.GetOr(options.Author, "somebody"), request.GetOr(options.Link, null!), QuoteText()) : entry.Page.Quote,
            IsHearsay = request.GetOr(options.Hearsay, entry.Page.IsHearsay),
        },
    };

    private Reading<IceEntry> Checked(IceEntry entry) => FaultOf(entry) is { } fault ? new Misread(fault) : entry;

    private string? FaultOf(IceEntry entry) =>
        entry.Page is { Holes: [], Hazards: [] } ? "Nothing was measured or seen in that. Give clear:5in, holes:\"4 5 5 3in\" or hazard:\"open water\"."
        : request.Has(options.Holes) && (request.Has(options.Clear) || request.Has(options.White) || request.Has(options.Total))
            ? "holes and one thickness are two reports: keep holes:\"4 5 5 3in\" or clear:5in."
        : request.Has(options.Kind) && (request.Has(options.Clear) || request.Has(options.White)) && request.Get(options.Kind).BearsNothing() is false
            ? "clear and white say the kind already: leave kind out, or give total:5in kind:clear."
        : Contradiction() is { } contradiction ? contradiction
        : (request.Has(options.Link) || request.Has(options.Quote) || request.Has(options.Written)) && !request.Has(options.Author)
            ? "A post that is passed on has somebody who wrote it: give author:\"name\"."
        : Quotes && request.TryGet(options.Written, out var written) && written.From(request.At, request.Caller.Zone) > request.At + ClockSlack
            ? "That post would be from the future. Give written:\"2h ago\"."
        : TimeFault(entry.MeasuredAt);

    private string? Contradiction()
    {
        if (!request.TryGet(options.Total, out var total))
        {
            return null;
        }

        var layers = (request.TryGet(options.Clear, out var clear) ? clear.Nanometres : 0) + (request.TryGet(options.White, out var white) ? white.Nanometres : 0);
        return layers > total.Nanometres
            ? $"The layers come to more than the total of {IceShow.Measured(total.Length, request.Units)}: measure again, or give the ones you are sure of."
            : null;
    }

    private string? TimeFault(DateTimeOffset? measured) =>
        measured > request.At + ClockSlack ? $"That is in the future. Give when it was measured, such as when:\"{Moment.Before(TimeZoneInfo.ConvertTime(measured.Value, request.Caller.Zone), request.At)}\"."
        : measured < IceSeason.StartOf(TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone)) ? "That is older than this season. Give when it was measured, such as when:\"yesterday 16:05\"."
        : null;

    private string? QuoteText() => request.TryGet(options.Written, out var written)
        ? $"{request.GetOr(options.Quote, "")} (written {written.From(request.At, request.Caller.Zone):yyyy-MM-dd HH:mm})".Trim()
        : request.GetOr(options.Quote, null!);

    private IceHole[] HolesSaid()
    {
        var kind = request.GetOr(options.Kind, IceKind.Unknown);
        if (request.TryGet(options.Holes, out var series))
        {
            return [.. series.Select(hole => HoleOf(IceThickness.Of(hole)!, kind))];
        }

        if (!request.Has(options.Clear) && !request.Has(options.White))
        {
            return [HoleOf(Thickness(options.Total)!, kind)];
        }

        return [new IceHole(Thickness(options.Clear), Thickness(options.White), Rest(), kind.BearsNothing() ? kind : null)];
    }

    // What the layers leave of the total is ice that nobody named.
    private IceThickness? Rest()
    {
        if (!request.TryGet(options.Total, out var total))
        {
            return null;
        }

        var layers = (request.TryGet(options.Clear, out var clear) ? clear.Nanometres : 0) + (request.TryGet(options.White, out var white) ? white.Nanometres : 0);
        return total.Nanometres > layers ? IceThickness.Of(new ExactLength(total.Nanometres - layers, total.Unit)) : null;
    }

    private IceThickness? Thickness(CommandOption<ExactLength> option) => request.TryGet(option, out var given) ? IceThickness.Of(given) : null;

    private static IceHole HoleOf(IceThickness thickness, IceKind kind) => kind switch
    {
        IceKind.Clear => new(thickness, null, null, null),
        IceKind.White => new(null, thickness, null, null),
        IceKind.Unknown => new(null, null, thickness, null),
        _ => new(null, null, thickness, kind),
    };
}
