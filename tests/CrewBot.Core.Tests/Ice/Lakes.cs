using CrewBot.Core.Ice;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Ice;

/// <summary>Reports of an invented lake.</summary>
internal static class Lakes
{
    public const string Landing = "north landing";

    public static readonly DateTimeOffset Now = new(2026, 1, 10, 9, 0, 0, TimeSpan.FromHours(-6));

    public static readonly AirSince Cold = new(Temperature.FromDegreesCelsius(-8), null);

    public static readonly Gen<IceKind> AnyKind = AnyOf(Enum.GetValues<IceKind>());

    public static readonly Gen<IceHazard> AnyHazard = AnyOf(Enum.GetValues<IceHazard>());

    public static readonly Gen<IceReport> AnyReport = Gen
        .Select(Gen.Select(AnyKind, Gen.Double[0, 30]).Array[0, 4], AnyHazard.Array[0, 2], Gen.Int[0, 60], Gen.Int[0, 3], Gen.Bool)
        .Select((holes, hazards, hours, place, measured) => Report(
            place switch { 0 => null, 1 => "south bay", _ => Landing },
            hours,
            [.. holes.Select(hole => IceSection.Of(hole.Item1, Length.FromInches(hole.Item2)))]) with
        {
            Hazards = hazards,
            IsMeasured = measured,
        });

    public static Gen<T> AnyOf<T>(IReadOnlyList<T> values) => Gen.Int[0, values.Count - 1].Select(index => values[index]);

    public static IceReport Report(string? spot, double hoursAgo, params IReadOnlyList<IceSection> holes) => new()
    {
        Number = 7,
        Spot = spot,
        FiledAt = Now.AddHours(-hoursAgo),
        MeasuredAt = Now.AddHours(-hoursAgo),
        MeasuredBy = "Ada",
        Holes = holes,
    };

    public static IceSection Inches(IceKind kind, double inches) => IceSection.Of(kind, Length.FromInches(inches));

    public static IceReport Today(IceKind kind, double inches) => Report(Landing, 1, Inches(kind, inches));

    public static IceStanding At(params IReadOnlyList<IceReport> reports) => CombinedReports.At(reports, Landing, Cold, Now);
}
