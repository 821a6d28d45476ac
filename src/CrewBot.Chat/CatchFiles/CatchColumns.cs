using System.Globalization;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.CatchFiles;

/// <summary>The columns of a catch file, in their order. Numbers are exact and in the unit that the angler used.</summary>
internal static class CatchColumns
{
    public const string Number = "number";
    public const string Angler = "angler";
    public const string AnglerId = "angler_id";
    public const string Species = "species";
    public const string CaughtAt = "caught_at";
    public const string Length = "length";
    public const string LengthUnit = "length_unit";
    public const string Weight = "weight";
    public const string WeightUnit = "weight_unit";
    public const string Girth = "girth";
    public const string GirthUnit = "girth_unit";
    public const string Depth = "depth";
    public const string DepthUnit = "depth_unit";
    public const string Water = "water";
    public const string Spot = "spot";
    public const string Presentation = "presentation";
    public const string Lure = "lure";
    public const string Mood = "mood";
    public const string Line = "line";
    public const string Fate = "fate";
    public const string Note = "note";
    public const string Photo = "photo";
    public const string PhotoHash = "photo_sha256";
    public const string LoggedAt = "logged_at";
    public const string VoidedAt = "voided_at";

    /// <summary>The parts of a second are written only where there are any.</summary>
    public const string Instant = "yyyy-MM-dd'T'HH:mm:ss.FFFK";

    public static IReadOnlyList<CatchColumn> All { get; } =
    [
        Numbers(Number, fish => Text(fish.Number)),
        Texts(Angler, fish => fish.Angler),
        Texts(AnglerId, fish => fish.AnglerId),
        Texts(Species, fish => fish.Entry.Species),
        Texts(CaughtAt, fish => Text(fish.Entry.CaughtAt)),
        Numbers(Length, fish => Text(fish.Entry.Length?.Number)),
        Texts(LengthUnit, fish => StoredUnits.WordOf(fish.Entry.Length)),
        Numbers(Weight, fish => Text(fish.Entry.Weight?.Number)),
        Texts(WeightUnit, fish => StoredUnits.WordOf(fish.Entry.Weight)),
        Numbers(Girth, fish => Text(fish.Entry.Girth?.Number)),
        Texts(GirthUnit, fish => StoredUnits.WordOf(fish.Entry.Girth)),
        Numbers(Depth, fish => Text(fish.Entry.Depth?.Number)),
        Texts(DepthUnit, fish => StoredUnits.WordOf(fish.Entry.Depth)),
        Texts(Water, fish => fish.Water),
        Texts(Spot, fish => fish.Spot),
        Texts(Presentation, fish => fish.Entry.Presentation),
        Texts(Lure, fish => fish.Entry.Lure),
        Texts(Mood, fish => fish.Entry.Mood),
        Numbers(Line, fish => Text(fish.Entry.Line)),
        Texts(Fate, fish => fish.Entry.Kept switch { true => "kept", false => "released", null => null }),
        Texts(Note, fish => fish.Entry.Note),
        Texts(Photo, fish => fish.Entry.Photo),
        Texts(PhotoHash, fish => fish.Entry.PhotoHash),
        Texts(LoggedAt, fish => Text(fish.Entry.LoggedAt.ToUniversalTime())),
        Texts(VoidedAt, fish => Text(fish.VoidedAt?.ToUniversalTime())),
    ];

    private static CatchColumn Numbers(string name, Func<FileCatch, string?> of) => new(name, IsNumber: true, of);

    private static CatchColumn Texts(string name, Func<FileCatch, string?> of) => new(name, IsNumber: false, of);

    private static string? Text(long? number) => number?.ToString(CultureInfo.InvariantCulture);

    private static string? Text(decimal? number) => number?.ToString(CultureInfo.InvariantCulture);

    private static string? Text(DateTimeOffset? instant) => instant is not { } known ? null
        : known.Offset == TimeSpan.Zero ? known.UtcDateTime.ToString(Instant, CultureInfo.InvariantCulture)
        : known.ToString(Instant, CultureInfo.InvariantCulture);
}
