using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>What the crew has read about keeping one species on one water, each with its reference. Null is unknown.</summary>
internal sealed record KeepRule
{
    /// <summary>The shortest that may be kept.</summary>
    public (ExactLength Value, string Reference)? Minimum { get; init; }

    /// <summary>The longest that may be kept.</summary>
    public (ExactLength Value, string Reference)? Maximum { get; init; }

    /// <summary>How many one angler may keep a day.</summary>
    public (int Value, string Reference)? Limit { get; init; }

    public bool IsUnknown => Minimum is null && Maximum is null && Limit is null;

    /// <summary>Picks out the rules of a species.</summary>
    public static KeepRule Of(IReadOnlyList<WaterRule> rules, string species)
    {
        WaterRule? Find(string what) => rules.FirstOrDefault(rule => rule.Rule == RulesOfWater.OfSpecies(what, species));
        (ExactLength, string)? Size(string what) => Find(what) is { } rule ? (SizeOf(rule.Value), rule.Reference) : null;
        return new KeepRule
        {
            Minimum = Size(RulesOfWater.Minimum),
            Maximum = Size(RulesOfWater.Maximum),
            Limit = Find(RulesOfWater.Limit) is { } limit ? (int.Parse(limit.Value, CultureInfo.InvariantCulture), limit.Reference) : null,
        };
    }

    /// <summary>Writes a size as a rule stores it: exact and in its own unit, "15 in".</summary>
    public static string Write(ExactLength size) => string.Create(CultureInfo.InvariantCulture, $"{size.Number:0.############} {StoredUnits.WordOf(size)}");

    private static ExactLength SizeOf(string written)
    {
        var parts = written.Split(' ');
        return ExactLength.From(decimal.Parse(parts[0], CultureInfo.InvariantCulture), StoredUnits.LengthUnitOf(parts[1])!.Value);
    }
}
