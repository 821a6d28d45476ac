using CrewBot.Core.Ice;
using UnitsNet;

namespace CrewBot.Storage.Ice;

/// <summary>A report of ice as it stands in the crew's book.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="Entry">What was filed.</param>
/// <param name="Filer">Who filed it, by name; with that of their crew, where it is a partner's.</param>
public sealed record FiledIce(long Number, IceEntry Entry, string Filer)
{
    /// <summary>Why a steward closed its bad news; null while nobody has.</summary>
    public string? ClosedReason { get; init; }

    /// <summary>Why it was taken back; null while it stands.</summary>
    public string? WithdrawnReason { get; init; }

    /// <summary>Whether it lies in a partner crew's book: then it is bad news, and says no more of its place than that crew shows.</summary>
    public bool IsPartners { get; init; }

    /// <summary>Who measured: whoever is quoted, or the filer.</summary>
    public string MeasuredBy => Entry.Page.Quote?.Author ?? Filer;

    /// <summary>What is computed from.</summary>
    public IceReport ToReport() => ReportOf(Entry) with { Number = Number, MeasuredBy = MeasuredBy, Closed = ClosedReason is not null, IsPartners = IsPartners };

    /// <summary>What would be computed from an entry that has no number yet; whoever files it has a name.</summary>
    public static IceReport ReportOf(IceEntry entry) => new()
    {
        Number = 0,
        Spot = entry.Spot,
        MeasuredAt = entry.MeasuredAt,
        MeasuredBy = entry.Page.Quote?.Author ?? "whoever files it",
        FiledAt = entry.FiledAt,
        IsMeasured = !entry.Page.IsHearsay,
        Holes = [.. entry.Page.Holes.Select(hole => hole.ToSection())],
        Hazards = entry.Page.Hazards,
        Air = entry.Page.Air is { } air ? Temperature.FromDegreesCelsius(air) : null,
    };
}
