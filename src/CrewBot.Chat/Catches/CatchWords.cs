using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using UnitsNet;

namespace CrewBot.Chat.Catches;

/// <summary>Says fish and entries in words.</summary>
internal static class CatchWords
{
    private const decimal NanometresInAnInch = 25_400_000;
    private const decimal NanometresInACentimetre = 10_000_000;
    private const decimal LongInCentimetres = 1000;

    private static readonly Mass LightestInHundredths = Mass.FromPounds(1);

    /// <summary>A fish's length: "22.5 in (57.2 cm)".</summary>
    public static string Length(ExactLength length, CrewUnits units) => Length(length.Nanometres, units);

    /// <summary>The same in whole nanometres.</summary>
    public static string Length(long nanometres, CrewUnits units)
    {
        var inches = $"{(nanometres / NanometresInAnInch).ToString("0.##", CultureInfo.InvariantCulture)} in";
        var centimetres = $"{(nanometres / NanometresInACentimetre).ToString("0.#", CultureInfo.InvariantCulture)} cm";
        return Pair(inches, centimetres, units);
    }

    /// <summary>Lengths of many fish together, in whole nanometres: "2865 in (72.8 m)" from 10 m on.</summary>
    public static string Total(long nanometres, CrewUnits units)
    {
        var centimetres = nanometres / NanometresInACentimetre;
        return centimetres < LongInCentimetres
            ? Length(nanometres, units)
            : Pair($"{(nanometres / NanometresInAnInch).ToString("0.##", CultureInfo.InvariantCulture)} in", $"{(centimetres / 100).ToString("0.0", CultureInfo.InvariantCulture)} m", units);
    }

    /// <summary>What a scale said, as finely as scales say it: "8.19 lb (3.71 kg)".</summary>
    public static string Weight(ExactMass weight, Request request) => weight.Mass < LightestInHundredths
        ? request.Show.Fish(weight.Mass)
        : Pair(
            $"{weight.Mass.Pounds.ToString("0.##", CultureInfo.InvariantCulture)} lb",
            $"{weight.Mass.Kilograms.ToString("0.##", CultureInfo.InvariantCulture)} kg",
            request.Units);

    /// <summary>A depth, as the rest of the replies write it.</summary>
    public static string Depth(ExactLength depth, Request request) => request.Show.Depth(depth.Length);

    /// <summary>An entry in a line: "#7 walleye, 22.5 in (57.2 cm), Ana, Loon Basin, 14:20".</summary>
    public static string Row(LoggedCatch logged, TradeKnowledge knowledge, Request request)
    {
        var entry = logged.Entry;
        string?[] parts =
        [
            $"#{logged.Number} {NameOf(entry.Species, knowledge)}",
            entry.Length is { } length ? Length(length, request.Units) : null,
            entry.Weight is { } weight ? Weight(weight, request) : null,
            logged.Angler,
            logged.Water,
            Moment.Show(entry.CaughtAt, request.At),
        ];
        return string.Join(", ", parts.OfType<string>());
    }

    /// <summary>What a species is called; its key where the knowledge no longer holds it.</summary>
    public static string NameOf(string key, TradeKnowledge knowledge) =>
        knowledge.Species.Has(key) ? knowledge.Species[key].Name : key;

    /// <summary>What a presentation is called; its key where the knowledge no longer holds it.</summary>
    public static string PresentationOf(string key, TradeKnowledge knowledge) =>
        knowledge.Presentations.Has(key) ? knowledge.Presentations[key].Name : key;

    /// <summary>Capital letter first.</summary>
    public static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Pair(string customary, string metric, CrewUnits units) =>
        units == CrewUnits.Customary ? $"{customary} ({metric})" : $"{metric} ({customary})";
}
