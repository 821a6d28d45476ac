using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Ice;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Writes one report in lines. Of a place where ice is never even no number is shown, whoever measured it.</summary>
internal static class IceSheet
{
    /// <summary>By which rule white and unnamed ice counts, and whose it is.</summary>
    public const string HalfRule = "white or unnamed ice by half; US Army TM 5-852-1 and Minnesota DNR, undated";

    /// <summary>What was found, in a line: "5 in (12.7 cm) clear, 2 in (5 cm) white; open water".</summary>
    public static string Found(FiledIce filed, string water, CrewUnits units)
    {
        var page = filed.Entry.Page;
        var parts = new List<string>();
        parts.AddRange(page.Hazards.Select(IceWords.Of));
        if (page.Holes.Count > 0 && StayOffPlace.In(water, filed.Entry.Spot) is { } word)
        {
            parts.Add($"measured, but no number is given for a place like that ({word}): stay off");
        }
        else if (page.Holes is [var only])
        {
            parts.Add(HoleText(only, units));
        }
        else if (page.Holes.Count > 1)
        {
            parts.Add($"{page.Holes.Count} holes{(page.From is { } from ? $" from {from}" : "")}: {string.Join(" · ", page.Holes.Select(hole => HoleText(hole, units)))}");
        }

        return CatchWords.Sentence(string.Join("; ", parts));
    }

    /// <summary>What it counts as; null without a measured hole, and for clear ice in one, which counts as it is.</summary>
    public static string? CountsAs(FiledIce filed, string water, CrewUnits units)
    {
        var report = filed.ToReport();
        return !IsNumbered(filed, water) ? null
            : report.Weak is { } weak ? $"{CatchWords.Sentence(IceWords.Of(weak))} ice counts as none, at any thickness."
            : report.Holes is [{ IsClear: true }] ? null
            : $"{(report.Holes.Count > 1 ? "The least hole counts" : "Counts")} as {ClearText(report.Holes, units)}.";
    }

    /// <summary>The least that holes count as, by which rule: "3 in (7.6 cm) of clear ice".</summary>
    public static string ClearText(IReadOnlyList<IceSection> holes, CrewUnits units) =>
        ClearText(holes.MinBy(hole => hole.Effective.Nanometers)!.Effective, holes.All(hole => hole.IsClear), units);

    /// <summary>The least that something counts as; by which rule, unless all of it was clear.</summary>
    public static string ClearText(Length least, bool wasClear, CrewUnits units) =>
        $"{IceShow.Measured(least, units)} of clear ice{(wasClear ? "" : $" ({HalfRule})")}";

    /// <summary>Whether a thickness was given that may be shown.</summary>
    public static bool IsNumbered(FiledIce filed, string water) =>
        filed.Entry.Page.Holes.Count > 0 && StayOffPlace.In(water, filed.Entry.Spot) is null;

    /// <summary>
    /// Why a report is shown and no figure comes of it, and what would change that: "it lacks where: …". Null where one does.
    /// </summary>
    public static string? WhyNoFigure(FiledIce filed, string water)
    {
        var (report, number) = (filed.ToReport(), filed.Number);
        if (report.Holes.Count == 0)
        {
            return $"#{number} is shown but gives no figure: no thickness was measured.";
        }

        if (StayOffPlace.In(water, report.Spot) is { } word)
        {
            return $"#{number} is shown but gives no figure: none is ever given for a place like that ({word}).";
        }

        if (!report.IsMeasured)
        {
            return $"#{number} is shown but gives no figure: it was guessed or heard. /ice report files what you measure.";
        }

        (string What, string Option)[] lacks =
        [
            .. report.Spot is null ? [("where", "spot:\"north bay\"")] : ((string, string)[])[],
            .. report.MeasuredAt is null ? [("when", "when:\"10 min ago\"")] : ((string, string)[])[],
        ];
        if (lacks.Length == 0)
        {
            return null;
        }

        // Where bad news is, only a steward may narrow down.
        var add = report.IsBadNews ? "" : $" To add it: /ice correct report:{number} {string.Join(' ', lacks.Select(lack => lack.Option))} reason:\"left out\"";
        return $"#{number} is shown but gives no figure: it lacks {string.Join(" and ", lacks.Select(lack => lack.What))}.{add}";
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
    public static string Line(FiledIce filed, string water, Request request) =>
        $"#{filed.Number} {filed.Entry.Spot ?? "no spot named"}{(filed.ClosedReason is null ? "" : " (bad news, closed)")}: {Found(filed, water, request.Units)}. {Source(filed)}, {Age(filed, request.At)}.";

    /// <summary>One line on a board about bad news: what is against the ice of a partner's, without a number.</summary>
    public static string Standing(FiledIce filed, string water, Request request) => filed.IsPartners
        ? $"{filed.Entry.Spot ?? "somewhere on it, the spot is not shared"}: {IceWords.Against(filed.Entry.Page.Hazards)}. A partner crew's, {Source(filed)}, {Age(filed, request.At)}."
        : Line(filed, water, request);

    public static Length LeastOf(IceReport report) => report.Holes.Select(hole => hole.Effective).MinBy(thickness => thickness.Nanometers);

    private static string HoleText(IceHole hole, CrewUnits units)
    {
        (IceThickness? Thickness, string Kind)[] layers =
            [(hole.Clear, " clear"), (hole.White, " white"), (hole.Unsorted, hole.Weak is { } weak ? $" {IceWords.Of(weak)}" : ", kind not said")];
        return string.Join(" + ", layers
            .Where(layer => layer.Thickness is not null)
            .Select(layer => IceShow.Measured(layer.Thickness!.ToExact().Length, units) + layer.Kind));
    }
}
