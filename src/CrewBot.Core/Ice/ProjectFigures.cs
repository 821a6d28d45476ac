using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>
/// The least thickness of new clear lake ice that CrewBot ever names for a use: near the most cautious of the current public
/// minimums that were read. No agency calls ice of any thickness safe.
/// </summary>
public static class ProjectFigures
{
    /// <summary>Below this everybody stays off, always: Minnesota DNR, 22 December 2022.</summary>
    public static Length HardStop { get; } = Length.FromInches(4);

    private static readonly Dictionary<IceUse, IceFigure> Figures = new()
    {
        [IceUse.OnFoot] = Figure(6, $"one person on foot, spaced out", "New Hampshire Fish and Game (6 in); some agencies accept 4 in, we don't", "26 Dec 2017"),
        [IceUse.Gathering] = Figure(10, $"several people together or a shelter", "New Hampshire Fish and Game (no gathering under 8 to 10 in), as reported", "2017"),
        [IceUse.Snowmobile] = Figure(10, $"a snowmobile or small ATV", "New Hampshire Fish and Game (8 to 10 in)", "26 Dec 2017"),
        [IceUse.SideBySide] = Figure(10, $"a side-by-side", "the upper figure for snowmobiles; Minnesota DNR alone prints one, 7 to 8 in", "23 Dec 2024"),
        [IceUse.Car] = Figure(12, $"a small car or SUV, only where the local authority permits it", "Saskatchewan Water Security Agency (30 cm), rounded up to 12 in", "29 Nov 2024"),
        [IceUse.Pickup] = Figure(15, $"a pickup, only where the local authority permits it", "Minnesota DNR (12 to 15 in)", "older table, reported until 2022"),
        [IceUse.HeavyTruck] = Figure(20, $"a heavy truck with a wheeled shelter, only where the local authority permits it", "Minnesota DNR (20 in or more)", "23 Dec 2024"),
    };

    public static IceFigure For(IceUse use) => Figures[use];

    private static IceFigure Figure(double inches, FormattableString rule, string source, string date) =>
        new(Length.FromInches(inches), rule, source, date);
}
