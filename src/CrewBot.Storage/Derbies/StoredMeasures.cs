using System.Globalization;
using CrewBot.Core.Derbies.Scoring;

namespace CrewBot.Storage.Derbies;

/// <summary>The words by which the table names what a fish is worth.</summary>
internal static class StoredMeasures
{
    private const string Points = "points";

    public static string WordOf(FishMeasure measure) => measure switch
    {
        LengthMeasure => "length",
        PointsMeasure => Points,
        TrophyShareMeasure => "share",
        ConditionMeasure => "condition",
        CountMeasure => "count",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Has no word in the table."),
    };

    /// <summary>The factors of points, as "walleye=1;burbot=0.5"; null for another measure.</summary>
    public static string? FactorsOf(FishMeasure measure) => measure is PointsMeasure points
        ? string.Join(';', points.Factors.Select(pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Key}={pair.Value}")))
        : null;

    public static FishMeasure Read(string word, string? factors) => word switch
    {
        "length" => new LengthMeasure(),
        Points => new PointsMeasure(factors!.Split(';').Select(pair => pair.Split('='))
            .ToDictionary(pair => pair[0], pair => decimal.Parse(pair[1], CultureInfo.InvariantCulture))),
        "share" => new TrophyShareMeasure(),
        "condition" => new ConditionMeasure(),
        _ => new CountMeasure(),
    };
}
