using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Ice;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Writes one report in lines.</summary>
internal static class IceSheet
{
    /// <summary>What was found, in a line: "5 in (12.7 cm) clear, 2 in (5 cm) white; open water".</summary>
    public static string Found(FiledIce filed, CrewUnits units)
    {
        var page = filed.Entry.Page;
        var parts = new List<string>();
        parts.AddRange(page.Hazards.Select(IceWords.Of));
        if (page.Holes is [var only])
        {
            parts.Add(HoleText(only, units));
        }
        else if (page.Holes.Count > 1)
        {
            parts.Add($"{page.Holes.Count} holes{(page.From is { } from ? $" from {from}" : "")}: {string.Join(" · ", page.Holes.Select(hole => HoleText(hole, units)))}");
        }

        return string.Join("; ", parts);
    }

    /// <summary>What it counts as; null without a measured hole.</summary>
    public static string? CountsAs(FiledIce filed, CrewUnits units)
    {
        var report = filed.ToReport();
        return report.Holes.Count == 0 ? null
            : report.Weak is { } weak ? $"{Capital(IceWords.Of(weak))} ice counts as none, at any thickness."
            : $"{(report.Holes.Count > 1 ? "The least hole counts" : "Counts")} as {IceShow.Measured(LeastOf(report), units)} of clear ice.";
    }

    /// <summary>Snow, slush, air and note, as far as they were given.</summary>
    public static string? Beside(FiledIce filed, Request request)
    {
        var page = filed.Entry.Page;
        string?[] parts =
        [
            page.Snow is { } snow ? $"snow {request.Show.Gap(snow.ToExact().Length)}" : null,
            page.Slush is { } slush ? $"slush {request.Show.Gap(slush.ToExact().Length)}" : null,
            page.Air is { } air ? $"air {request.Show.Degrees(Temperature.FromDegreesCelsius(air))}" : null,
            page.Note,
        ];
        return parts.Any(part => part is not null) ? $"Also: {string.Join(", ", parts.Where(part => part is not null))}." : null;
    }

    /// <summary>Who, and by whose word.</summary>
    public static string Source(FiledIce filed) => filed.Entry.Page switch
    {
        { Quote: { } quote } => $"{quote.Author}, passed on by {filed.Filer}{(filed.Entry.Page.IsHearsay ? ", not measured" : "")}",
        { IsHearsay: true } => $"{filed.Filer}, not measured",
        _ => filed.Filer,
    };

    public static string Age(FiledIce filed, DateTimeOffset now) => filed.Entry.MeasuredAt is { } measured
        ? IceShow.Age(now - measured)
        : $"nobody said when, filed {IceShow.Age(now - filed.Entry.FiledAt)}";

    /// <summary>One line on a board.</summary>
    public static string Line(FiledIce filed, Request request) =>
        $"#{filed.Number} {filed.Entry.Spot ?? "no spot named"}: {Found(filed, request.Units)}. {Source(filed)}, {Age(filed, request.At)}.";

    public static Length LeastOf(IceReport report) => report.Holes.Select(hole => hole.Effective).MinBy(thickness => thickness.Nanometers);

    private static string HoleText(IceHole hole, CrewUnits units)
    {
        (IceThickness? Thickness, string Kind)[] layers =
            [(hole.Clear, " clear"), (hole.White, " white"), (hole.Unsorted, hole.Weak is { } weak ? $" {IceWords.Of(weak)}" : ", kind not said")];
        return string.Join(" + ", layers
            .Where(layer => layer.Thickness is not null)
            .Select(layer => IceShow.Measured(layer.Thickness!.ToExact().Length, units) + layer.Kind));
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
