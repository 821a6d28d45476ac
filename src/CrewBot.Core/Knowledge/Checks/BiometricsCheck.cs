using CrewBot.Core.Fish;
using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a species' standard weight, length categories and girth divisor.</summary>
internal static class BiometricsCheck
{
    private const double LongestCentimetres = 300;
    private const int SourceLength = 200;

    // The expected range over 1773 species (Froese 2006, Journal of Applied Ichthyology 22:241-253).
    private const double LeastSlope = 2.5;
    private const double GreatestSlope = 3.5;

    // Published intercepts lie from -6.2 to -4.6; far beyond, a power of ten is no weight at all.
    private const double LeastIntercept = -10;
    private const double GreatestIntercept = 0;

    // The published tables were rounded separately, by up to 5 % of a bound; a misprint is off by more.
    private const double TablesAgreeWithin = 0.1;

    public static IEnumerable<Misfit> Misfits(Species species) =>
    [
        .. species.StandardWeight is { } equation ? Equation(equation, species) : [],
        .. species.LengthCategories is { } tables ? Categories(tables) : [],
        .. Girth(species.GirthDivisor),
    ];

    private static IEnumerable<Misfit> Equation(StandardWeightEquation equation, Species species)
    {
        if (equation.Slope is not (>= LeastSlope and <= GreatestSlope))
        {
            yield return new("standardWeight.slope", "The slope of a fish lies from 2.5 to 3.5.");
        }
        else if (!(equation.MinimumLength > Length.Zero && equation.MinimumLength < species.Lengths.Trophy))
        {
            yield return new("standardWeight.minimumLength", "It must lie above 0 and below the trophy length.");
        }
        else if (!FitsTrophy(equation, species))
        {
            yield return new("standardWeight.intercept", "A trophy would weigh nothing like its weight above: write log10, for millimetres and grams.");
        }

        foreach (var misfit in FieldCheck.Text("standardWeight.source", equation.Source, SourceLength))
        {
            yield return misfit;
        }
    }

    private static bool FitsTrophy(StandardWeightEquation equation, Species species) =>
        equation.Intercept is >= LeastIntercept and <= GreatestIntercept
        && StandardWeight.Of(equation, species.Lengths.Trophy).Weight / species.Weights.Trophy is >= 0.5 and <= 2;

    private static IEnumerable<Misfit> Categories(LengthCategoryTables tables)
    {
        var categories = Enum.GetValues<LengthCategory>();
        foreach (var family in Enum.GetValues<UnitFamily>())
        {
            var bounds = categories.Select(category => tables.For(family)[category].Centimeters).ToList();
            if (!(FieldCheck.Climbs(bounds) && bounds[^1] <= LongestCentimetres))
            {
                yield return new(
                    $"lengthCategories.{family.ToString().ToLowerInvariant()}",
                    "Bounds must climb from stock over quality, preferred and memorable to trophy, above 0 and up to 300 cm.");
            }
        }

        foreach (var category in categories.Where(category => Apart(tables.Metric[category], tables.Inch[category])))
        {
            yield return new(
                $"lengthCategories.inch.{category.ToString().ToLowerInvariant()}",
                "It is more than a tenth off the metric bound: one of the two is misprinted.");
        }

        foreach (var misfit in FieldCheck.Text("lengthCategories.source", tables.Source, SourceLength))
        {
            yield return misfit;
        }
    }

    private static bool Apart(Length metric, Length inch) =>
        Math.Abs(inch.Meters - metric.Meters) > TablesAgreeWithin * metric.Meters;

    private static IEnumerable<Misfit> Girth(double? divisor)
    {
        if (divisor is { } cubicInches && cubicInches is not (>= GirthEstimate.LeastDivisor and <= GirthEstimate.GreatestDivisor))
        {
            yield return new("girthDivisor", "It lies from 500 to 1200, for inches and pounds; leave it out for the usual 800.");
        }
    }
}
