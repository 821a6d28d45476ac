using System.Globalization;
using CrewBot.Core.Ice;
using CrewBot.Core.Ice.Posts;
using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>
/// What was read out of a post, as a person corrects it: place by place in the words of a report, "landing: 4in clear; narrows:
/// slush, heard".
/// </summary>
/// <param name="Water">The water, where the post names one of the crew's and no other; null otherwise.</param>
/// <param name="Lines">One place each, and one more for what is not firm there.</param>
internal sealed record PostedIce(string? Water, IReadOnlyList<string> Lines)
{
    private const double Slip = 1e-6;
    private const double EighthsInAnInch = 8;

    /// <summary>All of it, as one option takes it.</summary>
    public string Text => string.Join("; ", Lines);

    /// <summary>Puts what was read into words.</summary>
    /// <param name="post">What was read.</param>
    /// <param name="text">What it was read out of: it may name its water ahead of all places.</param>
    /// <param name="waters">The crew's waters.</param>
    public static PostedIce Of(IcePost post, string text, IReadOnlyList<WaterRules> waters)
    {
        var named = waters.Where(water => NamesOf(water).Any(name => Names(text, name))).ToList();
        var only = named.Count == 1 ? named[0].Name : null;
        return new(only, [.. post.Places.SelectMany(place => LinesOf(post, place, Name(Placed(place, waters), only)))]);
    }

    /// <summary>Parts what a person sent back into places and words.</summary>
    public static IReadOnlyList<(string? Water, string? Spot, string Words)> Split(string text, IReadOnlyList<WaterRules> waters) =>
    [
        .. text.Split([';', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(line =>
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            var (water, spot) = Placed(colon < 0 ? null : line[..colon].Trim(), waters);
            return (water, spot, line[(colon + 1)..].Trim());
        }),
    ];

    /// <summary>A text in one line, cut where it is longer than some characters.</summary>
    public static string Shortened(string text, int longest)
    {
        var line = string.Join(' ', text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        var end = longest - 1;
        return line.Length <= longest ? line : $"{line[..(char.IsHighSurrogate(line[end - 1]) ? end - 1 : end)]}…";
    }

    // "Loon Basin north bay" is a water of the crew and a spot in it.
    private static (string? Water, string? Spot) Placed(string? place, IReadOnlyList<WaterRules> waters)
    {
        foreach (var water in waters)
        {
            foreach (var name in NamesOf(water))
            {
                if (place?.StartsWith(name, StringComparison.OrdinalIgnoreCase) is true && (place.Length == name.Length || !char.IsLetterOrDigit(place[name.Length])))
                {
                    return (water.Name, place[name.Length..].Trim(' ', ',', '-') is { Length: > 0 } spot ? spot : null);
                }
            }
        }

        return (null, place);
    }

    private static IEnumerable<string> NamesOf(WaterRules water) => water.Aliases.Append(water.Name);

    private static bool Names(string text, string name)
    {
        for (var at = text.IndexOf(name, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(name, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (at + name.Length == text.Length || !char.IsLetterOrDigit(text[at + name.Length])))
            {
                return true;
            }
        }

        return false;
    }

    private static string? Name((string? Water, string? Spot) place, string? only) =>
        place.Water is null || place.Water == only ? place.Spot : $"{place.Water} {place.Spot}".TrimEnd();

    private static IEnumerable<string> LinesOf(IcePost post, string? place, string? name)
    {
        var thicknesses = post.Thicknesses.Where(thickness => thickness.Place == place).ToLookup(thickness => Mark(thickness.IsHearsay, thickness.IsHedged));
        var hazards = post.Hazards.Where(hazard => hazard.Place == place).ToLookup(hazard => Mark(hazard.IsHearsay, isHedged: false));
        var told = hazards.Select(group => group.Key).Union(thicknesses.Select(group => group.Key)).Select(mark => string.Join(", ", Words([.. hazards[mark]], [.. thicknesses[mark]], mark)));
        var asked = post.UnitMissing.Where(number => number.Place == place).Select(number => $"{Number(number.Number)} which unit?");
        return told.Concat(asked).Select(words => name is null ? words : $"{name}: {words}");
    }

    private static string? Mark(bool isHearsay, bool isHedged) => isHearsay ? "heard" : isHedged ? "guessed" : null;

    // Hazards come first: a thickness with "slush" behind it would be slush of that depth.
    private static IEnumerable<string> Words(IReadOnlyList<PostedHazard> hazards, IReadOnlyList<PostedThickness> thicknesses, string? mark)
    {
        foreach (var hazard in hazards.Select(hazard => hazard.Hazard).Distinct())
        {
            yield return IceWords.Of(hazard);
        }

        if (thicknesses.Count > 0)
        {
            yield return string.Join(' ', Counted(thicknesses).Select(Words));
        }

        if (mark is not null)
        {
            yield return mark;
        }
    }

    // Clear and white at one place are its layers; otherwise the one that carries least stands for all.
    private static IEnumerable<PostedThickness> Counted(IReadOnlyList<PostedThickness> thicknesses) =>
        thicknesses.Count == 2 && thicknesses.Any(layer => layer.Kind == IceKind.Clear) && thicknesses.Any(layer => layer.Kind == IceKind.White)
            ? thicknesses
            : [thicknesses.MinBy(Counts)!];

    private static double Counts(PostedThickness thickness) =>
        thickness.Kind.BearsNothing() ? 0 : thickness.Kind == IceKind.Clear ? thickness.Least.Meters : thickness.Least.Meters / 2;

    private static string Words(PostedThickness thickness) =>
        $"{Written(thickness.Least)}{(thickness.Kind == IceKind.Unknown ? "" : $" {IceWords.Of(thickness.Kind)}")}";

    // Eighths of an inch are written as inches, anything else in centimetres, rounded down.
    private static string Written(Length thickness)
    {
        var eighths = thickness.Inches * EighthsInAnInch;
        return Math.Abs(eighths - Math.Round(eighths)) < Slip
            ? $"{Number(Math.Round(eighths) / EighthsInAnInch)}in"
            : $"{Number(Math.Floor((thickness.Centimeters * 10) + Slip) / 10)}cm";
    }

    private static string Number(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
