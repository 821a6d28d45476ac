using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>An agency's current public minimums for new clear ice, the upper end where it prints a range.</summary>
/// <param name="Key">How it is stored.</param>
/// <param name="Name">The agency.</param>
/// <param name="Date">The printings that were read.</param>
/// <param name="Figures">What it prints; a use it leaves out has no figure of its own.</param>
/// <param name="AdvisesAgainst">Uses that it advises against at any thickness.</param>
/// <remarks>
/// Tables for supervised moving loads and lists from before the current minimums are no part of this: they are two to three
/// times thinner.
/// </remarks>
public sealed record AuthorityTable(
    string Key, string Name, string Date, IReadOnlyDictionary<IceUse, Length> Figures, IReadOnlySet<IceUse> AdvisesAgainst)
{
    /// <summary>The tables a crew may choose from.</summary>
    public static IReadOnlyList<AuthorityTable> All { get; } =
    [
        new(
            "minnesota", "Minnesota DNR", "22 Dec 2022, 23 Dec 2024",
            Inches((IceUse.OnFoot, 4), (IceUse.Snowmobile, 7), (IceUse.SideBySide, 8), (IceUse.Car, 10), (IceUse.Pickup, 13), (IceUse.HeavyTruck, 20)),
            new HashSet<IceUse>()),
        new(
            "new-hampshire", "New Hampshire Fish and Game", "26 Dec 2017",
            Inches((IceUse.OnFoot, 6), (IceUse.Snowmobile, 10)),
            new HashSet<IceUse> { IceUse.Car, IceUse.Pickup, IceUse.HeavyTruck }),
        new(
            "michigan", "Michigan guidance, as printed by the press", "6 Feb 2023",
            Inches((IceUse.OnFoot, 5), (IceUse.Snowmobile, 8)),
            new HashSet<IceUse> { IceUse.Car, IceUse.Pickup, IceUse.HeavyTruck }),
        new(
            "saskatchewan", "Saskatchewan Water Security Agency", "17 Nov 2022, 29 Nov 2024",
            Centimetres((IceUse.OnFoot, 10), (IceUse.Snowmobile, 20), (IceUse.Car, 30), (IceUse.Pickup, 30)),
            new HashSet<IceUse> { IceUse.HeavyTruck }),
        new(
            "ontario", "Ontario Ministry of Natural Resources and Forestry", "24 Dec 2016",
            Centimetres((IceUse.Snowmobile, 20), (IceUse.Car, 30)),
            new HashSet<IceUse>()),
        new(
            "canadian-red-cross", "Canadian Red Cross, as reported by the press", "not dated",
            Centimetres((IceUse.OnFoot, 15), (IceUse.Gathering, 20), (IceUse.Snowmobile, 25)),
            new HashSet<IceUse>()),
    ];

    /// <summary>The table with a key; null when there is none.</summary>
    public static AuthorityTable? Find(string key) => All.FirstOrDefault(table => table.Key == key);

    private static Dictionary<IceUse, Length> Inches(params (IceUse Use, double Inches)[] figures) =>
        figures.ToDictionary(figure => figure.Use, figure => Length.FromInches(figure.Inches));

    private static Dictionary<IceUse, Length> Centimetres(params (IceUse Use, double Centimetres)[] figures) =>
        figures.ToDictionary(figure => figure.Use, figure => Length.FromCentimeters(figure.Centimetres));
}
