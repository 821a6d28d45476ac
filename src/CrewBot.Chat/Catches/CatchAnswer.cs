using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Chat.Catches;

/// <summary>What a fish comes to: its weight, its condition, its category, and how it stands beside others.</summary>
internal sealed class CatchAnswer(Request request, TradeKnowledge knowledge, Species species, CatchEntry entry)
{
    private readonly List<Figure> _figures = [];
    private readonly List<string> _lines = [];

    /// <summary>What to check of the water's rules.</summary>
    public required KeepingCheck Rules { get; init; }

    /// <summary>The angler's lines are in the water.</summary>
    public required bool LinesAreDown { get; init; }

    /// <summary>The answer to a fish that was logged.</summary>
    /// <param name="logged">The entry.</param>
    /// <param name="crewBest">The crew's longest of the species before.</param>
    /// <param name="ownBest">The angler's longest of the species before.</param>
    /// <param name="assumed">What was taken over from before.</param>
    public Reply Of(LoggedCatch logged, LongestCatch? crewBest, LongestCatch? ownBest, IReadOnlyList<string> assumed)
    {
        _figures.Add(CatchFigures.Number.Of(logged.Number));
        Circumstances(logged);
        Weight();
        Best(crewBest, ownBest);
        _lines.AddRange(Rules.Lines);
        _lines.AddRange(Understanding.Of(request, assumed));
        return new Reply
        {
            Headline = Headline(logged.Number),
            Lines = _lines,
            Figures = _figures,
            Cautions = [.. Rules.Checks, .. Cautions()],
            Actions = [LinesAreDown ? new("Lines up", ActionKind.Run, "lines up") : new("Lines down", ActionKind.Run, "lines down")],
            Audience = Audience.Crew,
        };
    }

    private string Headline(long number)
    {
        string?[] parts =
        [
            CatchWords.Sentence(species.Name),
            entry.Length is { } length ? CatchWords.Length(length, request.Units) : null,
            entry.Kept switch { true => "kept", false => "released", null => null },
        ];
        return $"{string.Join(", ", parts.OfType<string>())}: logged as #{number} for {request.Caller.Name}";
    }

    private void Circumstances(LoggedCatch logged)
    {
        string?[] parts =
        [
            logged.Water,
            logged.Spot,
            entry.Depth is { } depth ? CatchWords.Depth(depth, request) : null,
            entry.Presentation is { } key ? CatchWords.PresentationOf(key, knowledge) : null,
            entry.Lure,
            entry.Mood is { } mood ? $"{mood} mood" : null,
            entry.Line is { } line ? $"line {line}" : null,
            Moment.Show(entry.CaughtAt, request.At),
        ];
        _lines.Add($"{string.Join(", ", parts.OfType<string>())}.");
        if (entry.Depth is { } deep)
        {
            _figures.Add(CatchFigures.Depth.Of(deep));
        }
    }

    private void Weight()
    {
        if (entry.Weight is { } weighed)
        {
            _figures.Add(CatchFigures.Weight.Of(weighed));
        }

        if (entry.Length is not { } length)
        {
            _lines.AddRange(entry.Weight is { } alone ? [$"{CatchWords.Weight(alone, request)} on the scale."] : []);
            return;
        }

        _figures.Add(CatchFigures.Length.Of(length));
        var category = ClassedLength.Of(species, length) is { } classed
            ? $" {CatchWords.Sentence(classed.Category.ToString().ToLowerInvariant())} length by the {(classed.By == UnitFamily.Inch ? "inch" : "metric")} table."
            : "";
        _lines.Add(WeightText(length) + category);
    }

    private string WeightText(ExactLength length)
    {
        if (entry.Weight is { } weight)
        {
            return RelativeWeight.Of(species, length.Length, weight.Mass) is { } relative
                ? Weighed(weight, relative)
                : $"{CatchWords.Weight(weight, request)} on the scale; {StandardWeight.Of(species, length.Length).WhyNot!.ToString(request.Show)}.";
        }

        if (WeightEstimate.Of(species, length.Length, entry.Girth?.Length) is not { } estimate)
        {
            return $"{CatchWords.Sentence(StandardWeight.Of(species, length.Length).WhyNot!.ToString(request.Show))}; a girth would give an estimate.";
        }

        _figures.Add(CatchFigures.Estimate.Of(estimate.Weight));
        return estimate.Basis == WeightBasis.LengthAndGirth
            ? $"About {request.Show.Fish(estimate.Weight)}, from length and girth."
            : $"About {request.Show.Fish(estimate.Weight)} if in good condition, from its length (standard weight).";
    }

    private string Weighed(ExactMass weight, RelativeWeight relative)
    {
        _figures.Add(CatchFigures.Relative.Of(relative.Share));
        return $"{CatchWords.Weight(weight, request)} on the scale: {relative.Condition.ToString().ToLowerInvariant()} for its length, {relative.Share.Percent:0} % of the standard weight.";
    }

    private void Best(LongestCatch? crewBest, LongestCatch? ownBest)
    {
        if (entry.Length is not { } length)
        {
            return;
        }

        string Compared(string whose, LongestCatch? best, FigureKey<ExactLength> key)
        {
            if (best is null)
            {
                return $"{whose} first measured {species.Name}";
            }

            var before = best.LengthNm;
            _figures.Add(key.Of(new ExactLength(before, LengthUnit.Millimeter)));
            return length.Nanometres.CompareTo(before) switch
            {
                > 0 => $"{whose} best {species.Name}, over {CatchWords.Length(before, request.Units)}",
                0 => $"{whose} best {species.Name}, level with #{best.Number}",
                _ => $"{whose} best is {CatchWords.Length(before, request.Units)} (#{best.Number}, {best.Angler})",
            };
        }

        _lines.Add($"{Compared("The crew's", crewBest, CatchFigures.CrewBest)}; {Compared("your", ownBest, CatchFigures.OwnBest)}.");
    }

    // A fish that was kept needs no handling.
    private IEnumerable<string> Cautions() => entry.Kept == true
        ? []
        : HandlingCautions.For(species, entry.Depth?.Length, request.Written.ContainsKey("air") ? Air() : null)
            .Select(caution => $"{caution.Text.ToString(request.Show)} ({caution.Trigger.ToString(request.Show)})");

    private Temperature? Air() => Quantities.QuantityReaders.Air.Read(request.Written["air"], request.Units) is { Fault: null } air ? air.Value : null;
}
