using System.Globalization;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Commands;

/// <summary>The rules of a water as the crew stored them, in the form that planning takes.</summary>
internal static class RulesOfWater
{
    public const string Lines = "lines";
    public const string Hooks = "hooks";
    public const string Trebles = "trebles";
    public const string Barbless = "barbless";
    public const string Baits = "baits";
    public const string Lead = "lead";
    public const string Minimum = "minimum";
    public const string Maximum = "maximum";
    public const string Limit = "limit";
    public const string Yes = "yes";
    public const string Banned = "banned";

    /// <summary>Every rule that has a place in planning.</summary>
    public static IReadOnlyList<string> All { get; } = [Lines, Hooks, Trebles, Barbless, Baits, Lead];

    /// <summary>Every rule about keeping a species.</summary>
    public static IReadOnlyList<string> Keeping { get; } = [Minimum, Maximum, Limit];

    /// <summary>A rule about keeping, as it is stored for a species: "limit walleye".</summary>
    public static string OfSpecies(string rule, string species) => $"{rule} {species}";

    public static WaterRules From(Water water)
    {
        string? Of(string rule) => water.Rules.FirstOrDefault(known => known.Rule == rule)?.Value;
        int? Number(string rule) => Of(rule) is { } value ? int.Parse(value, CultureInfo.InvariantCulture) : null;
        return new WaterRules
        {
            Key = RecordSet.Plain(water.Name).Replace(' ', '-'),
            Name = water.Name,
            Aliases = [.. water.Names.Where(name => name != water.Name)],
            Source = string.Join("; ", water.Rules.Select(rule => rule.Reference).Distinct()),
            Lines = Number(Lines),
            HooksPerLine = Number(Hooks),
            TreblesPerLine = Number(Trebles),
            BarblessOnly = Of(Barbless) is { } barbless ? barbless == Yes : null,
            Baits = Of(Baits)?.Split(',').Select(Enum.Parse<BaitKind>).ToList(),
            LeadBanned = Of(Lead) is { } lead ? lead == Banned : null,
        };
    }
}
