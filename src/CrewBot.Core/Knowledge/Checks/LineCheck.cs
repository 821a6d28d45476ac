using CrewBot.Core.Lines;
using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a line material and its table of test against diameter.</summary>
internal static class LineCheck
{
    private const int FrostLength = 120;

    // Within a series test goes as diameter squared; published charts round to a thousandth of an inch, which
    // moves thin lines by a third or so. A slipped digit moves a size by far more.
    private const double WidestOff = 2;

    public static IEnumerable<Misfit> Misfits(LineMaterial line) =>
    [
        .. LureMaterialCheck.DensityMisfits(line.Density),
        .. Solid(line),
        .. Table(line.Sizes),
        .. FieldCheck.Between("overLabel", line.OverLabel, 0.5, 3),
        .. FieldCheck.Between("waterUptakePercent", line.WaterUptakePercent, 0, 100),
        .. Wear(line),
        .. FieldCheck.Text("inFrost", line.InFrost, FrostLength),
    ];

    private static IEnumerable<Misfit> Solid(LineMaterial line)
    {
        var (low, high) = (line.Modulus.Low.Gigapascals, line.Modulus.High.Gigapascals);
        if (!(low > 0 && low <= high && high <= 1000))
        {
            yield return new("modulus", "Low must not exceed high, and both lie above 0 and up to 1000 GPa.");
        }

        if (line.SolidFraction is not (> 0 and <= 1))
        {
            yield return new("solidFraction", "Write the solid share of its circle, above 0 and up to 1 (a single strand).");
        }

        if (line.RefractiveIndex is not (null or (>= 1 and <= 3)))
        {
            yield return new("refractiveIndex", "It lies from 1 to 3; leave it out for an opaque material.");
        }
    }

    private static IEnumerable<Misfit> Table(IReadOnlyList<LineSize> sizes)
    {
        if (sizes.Count < 2)
        {
            yield return new("sizes", "A table needs at least two sizes.");
            yield break;
        }

        if (!(sizes[0].Test > Force.Zero && sizes[0].Diameter > Length.Zero
            && FieldCheck.Climbs(sizes.Select(size => size.Test.Newtons))
            && FieldCheck.Climbs(sizes.Select(size => size.Diameter.Millimeters))))
        {
            yield return new("sizes", "List the thinnest first: test and diameter must both climb, above 0.");
            yield break;
        }

        var usual = sizes.Select(Strength).Order().ElementAt(sizes.Count / 2);
        foreach (var size in sizes.Where(size => Strength(size) / usual is < 1 / WidestOff or > WidestOff))
        {
            var stated = FormattableString.Invariant($"{size.Test.PoundsForce:0.#} lb at {size.Diameter.Millimeters:0.###} mm");
            yield return new("sizes", $"{stated} is out of line with the rest: look for a slipped digit.");
        }
    }

    private static double Strength(LineSize size) => size.Test.Newtons / Math.Pow(size.Diameter.Millimeters, 2);

    private static IEnumerable<Misfit> Wear(LineMaterial line)
    {
        if (!(line.LifeSeasons.Low > 0 && line.LifeSeasons.Low <= line.LifeSeasons.High && line.LifeSeasons.High <= 50))
        {
            yield return new("lifeSeasons", "Low must not exceed high, and both lie above 0 and up to 50.");
        }

        if (!(line.PricePer100Metres.Low > 0 && line.PricePer100Metres.Low <= line.PricePer100Metres.High
            && double.IsFinite(line.PricePer100Metres.High)))
        {
            yield return new("pricePer100Metres", "Low must not exceed high, and both lie above 0.");
        }
    }
}
