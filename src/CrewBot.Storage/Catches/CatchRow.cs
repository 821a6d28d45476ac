using System.Data.Common;
using Dapper;

namespace CrewBot.Storage.Catches;

/// <summary>An entry as it lies in its table.</summary>
internal sealed record CatchRow
{
    public static Func<DbDataReader, CatchRow> Rows(DbDataReader reader) => reader.GetRowParser<CatchRow>();

    public long CrewId { get; init; }

    public long Number { get; init; }

    public long MemberId { get; init; }

    public string Angler { get; init; } = "";

    public string? AnglerId { get; init; }

    public string? Water { get; init; }

    public string Species { get; init; } = "";

    public long? LengthNm { get; init; }

    public string? LengthUnit { get; init; }

    public long? WeightNg { get; init; }

    public string? WeightUnit { get; init; }

    public long? GirthNm { get; init; }

    public string? GirthUnit { get; init; }

    public long? DepthNm { get; init; }

    public string? DepthUnit { get; init; }

    public long? WaterId { get; init; }

    public long? SpotId { get; init; }

    public string? Spot { get; init; }

    public string? Presentation { get; init; }

    public string? Lure { get; init; }

    public string? Mood { get; init; }

    public long? Line { get; init; }

    public long? Kept { get; init; }

    public long CaughtAtMs { get; init; }

    public long OffsetMin { get; init; }

    public string? Note { get; init; }

    public string? Photo { get; init; }

    public string? PhotoHash { get; init; }

    public long LoggedAtMs { get; init; }

    public long? VoidedAtMs { get; init; }

    public static CatchRow Of(long crewId, long number, CatchEntry entry) => new()
    {
        CrewId = crewId,
        Number = number,
        MemberId = entry.MemberId,
        Species = entry.Species,
        LengthNm = entry.Length?.Nanometres,
        LengthUnit = StoredUnits.WordOf(entry.Length),
        WeightNg = entry.Weight?.Nanograms,
        WeightUnit = StoredUnits.WordOf(entry.Weight),
        GirthNm = entry.Girth?.Nanometres,
        GirthUnit = StoredUnits.WordOf(entry.Girth),
        DepthNm = entry.Depth?.Nanometres,
        DepthUnit = StoredUnits.WordOf(entry.Depth),
        WaterId = entry.WaterId,
        SpotId = entry.SpotId,
        Presentation = entry.Presentation,
        Lure = entry.Lure,
        Mood = entry.Mood,
        Line = entry.Line,
        Kept = entry.Kept is { } kept ? kept ? 1 : 0 : null,
        CaughtAtMs = Instants.Write(entry.CaughtAt),
        OffsetMin = (long)entry.CaughtAt.Offset.TotalMinutes,
        Note = entry.Note,
        Photo = entry.Photo,
        PhotoHash = entry.PhotoHash,
        LoggedAtMs = Instants.Write(entry.LoggedAt),
    };

    public LoggedCatch ToCatch() => new(Number, Angler, Water, VoidedAtMs is not null, new CatchEntry
    {
        MemberId = MemberId,
        Species = Species,
        Length = StoredUnits.LengthOf(LengthNm, LengthUnit),
        Weight = StoredUnits.MassOf(WeightNg, WeightUnit),
        Girth = StoredUnits.LengthOf(GirthNm, GirthUnit),
        Depth = StoredUnits.LengthOf(DepthNm, DepthUnit),
        WaterId = WaterId,
        SpotId = SpotId,
        Presentation = Presentation,
        Lure = Lure,
        Mood = Mood,
        Line = Line,
        Kept = Kept is { } kept ? kept == 1 : null,
        CaughtAt = Instants.Read(CaughtAtMs).ToOffset(TimeSpan.FromMinutes(OffsetMin)),
        Note = Note,
        Photo = Photo,
        PhotoHash = PhotoHash,
        LoggedAt = Instants.Read(LoggedAtMs),
    })
    {
        AnglerId = AnglerId,
        Spot = Spot,
        VoidedAt = VoidedAtMs is { } at ? Instants.Read(at) : null,
    };
}
