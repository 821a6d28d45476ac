using CrewBot.Chat.Commands;
using CrewBot.Chat.Lines;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>A lure on its way down, put into a reply.</summary>
/// <param name="Slow">The body at the slow end of its shape.</param>
/// <param name="Fast">The body at the fast end of its shape.</param>
/// <param name="Line">Null for a lure that falls free.</param>
/// <param name="Water">Water temperature.</param>
/// <param name="Current">Current, which may be none.</param>
/// <param name="Material">What the body is made of, in words.</param>
/// <param name="Shape">How it falls.</param>
internal sealed record DropAnswer(
    SinkingBody Slow, SinkingBody Fast, LineSpec? Line, Temperature Water, Speed Current, string Material, FallShape Shape)
{
    public Reply ToDepth(Request request, Length depth, List<string> assumed)
    {
        var show = request.Show;
        if (Drop.To(depth, Slow, Line?.InWater, Water) is not { } slow || Drop.To(depth, Fast, Line?.InWater, Water) is not { } fast)
        {
            return Reply.Refuse($"It never gets to {show.Depth(depth)}: {show.Lure(Slow.Mass)} of {Material} does not sink on that line.");
        }

        Blowback? hang = null;
        if (Current.MetersPerSecond > 0)
        {
            hang = Blowback.AtDepth(depth, Slow, Line?.InWater, Current, Water);
            if (hang is null)
            {
                return Reply.Refuse($"It never gets to {show.Depth(depth)} in {show.Pace(Current)} of current: go heavier or thinner.");
            }
        }

        var span = Shape.IsExact ? Showing.Span(slow.Time) : $"{Showing.Span(fast.Time)} to {Showing.Span(slow.Time)}";
        return Build(request, assumed, hang) with
        {
            Headline = $"{show.Lure(Slow.Mass)} {Material}: down to {show.Depth(depth)} in {span}",
            Figures =
            [
                RigFigures.Depth.Of(depth),
                .. Common(),
                RigFigures.DropTime.Of(slow.Time),
                .. Shape.IsExact ? [] : new[] { RigFigures.DropTimeFast.Of(fast.Time) },
                RigFigures.DropEndSpeed.Of(slow.EndSpeed),
                .. Hanging(hang),
            ],
        };
    }

    public Reply WithLineOut(Request request, Length lineOut, List<string> assumed)
    {
        var show = request.Show;
        return Blowback.WithLineOut(lineOut, Slow, Line?.InWater, Current, Water) is { } hang
            ? Build(request, assumed, hang) with
            {
                Headline = $"{show.Lure(Slow.Mass)} {Material} on {show.Depth(lineOut)} of line: {show.Depth(hang.Depth)} down, {show.Depth(hang.Offset)} off",
                Figures = [.. Common(), .. Hanging(hang)],
            }
            : Reply.Refuse($"{show.Lure(Slow.Mass)} of {Material} does not sink on that line.");
    }

    private Reply Build(Request request, List<string> assumed, Blowback? hang)
    {
        var show = request.Show;
        var (slow, fast) = (Settling.TerminalSpeed(Slow, Water), Settling.TerminalSpeed(Fast, Water));
        var lines = new List<string>
        {
            Shape.IsExact
                ? $"Bare: {Showing.Fine(Slow.Diameter)} across, sinks at {show.Pace(slow)}."
                : $"Bare: a ball of it is {Showing.Fine(Slow.Diameter)} across; a {Shape.Name} sinks at {show.Pace(slow)} to {show.Pace(fast)} (judgement).",
        };
        if (hang is not null)
        {
            lines.Add($"Current: {show.Pace(Current)} leans the line {hang.AtHole.Degrees:0}° at the hole; the lure hangs {show.Depth(hang.Offset)} off, {show.Depth(hang.LineOut)} of line out.");
        }

        lines.AddRange(Understanding.Of(request, assumed));
        return new Reply { Lines = lines, Reasons = [.. Workings()], Actions = ReplyAction.WhyAndShare(request) };
    }

    private IEnumerable<string> Workings()
    {
        yield return "Water: density by Tanaka et al. (2001), viscosity by IAPWS SR6-08(2011).";
        yield return "Sinking: weight in water against a sphere's drag by Clift and Gauvin (1971), from rest, half the displaced water moving along.";
        if (Line is not null)
        {
            yield return "Line: laminar drag along a thin cylinder after Glauert and Lighthill (1955), good to a quarter; spool and guides come on top.";
        }

        if (Current.MetersPerSecond > 0)
        {
            yield return "Current: the towed-cable balance, drag across the line by Cheng (2013).";
        }
    }

    private IEnumerable<Figure> Common()
    {
        var density = FreshWater.DensityAt(Water);
        yield return RigFigures.WaterTemperature.Of(Water);
        yield return RigFigures.WaterDensity.Of(density);
        yield return RigFigures.WaterViscosity.Of(FreshWater.ViscosityAt(Water));
        yield return RigFigures.LureWeight.Of(Slow.Mass);
        yield return RigFigures.LureDiameter.Of(Slow.Diameter);
        yield return RigFigures.WetWeight.Of(Slow.SubmergedWeightIn(density));
        yield return RigFigures.SettlingSpeed.Of(Settling.TerminalSpeed(Slow, Water));
        if (!Shape.IsExact)
        {
            yield return RigFigures.SettlingSpeedFast.Of(Settling.TerminalSpeed(Fast, Water));
        }

        if (Line is not null)
        {
            yield return RigFigures.LineDiameter.Of(Line.Diameter);
        }
    }

    private static IEnumerable<Figure> Hanging(Blowback? hang) => hang is null
        ? []
        :
        [
            RigFigures.BlowbackAngle.Of(hang.AtHole),
            RigFigures.BlowbackOffset.Of(hang.Offset),
            RigFigures.BlowbackDepth.Of(hang.Depth),
            RigFigures.LineOut.Of(hang.LineOut),
        ];
}
