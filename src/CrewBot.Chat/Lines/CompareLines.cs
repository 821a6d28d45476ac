using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Lines;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Chat.Lines;

/// <summary>Answers <c>/line compare</c>: two lines side by side in what matters on the ice.</summary>
public sealed class CompareLines : ICommandHandler
{
    private static readonly Force HookSet = Force.FromNewtons(10);
    private static readonly Length Lift = Length.FromCentimeters(60);
    private static readonly Length UsualDepth = Length.FromFeet(30);
    private static readonly Length OnReel = Length.FromMeters(50);

    private readonly TradeKnowledge _knowledge;
    private readonly RigOptions _options;
    private readonly CommandOption<LineSpec> _line;
    private readonly CommandOption<LineSpec> _with;

    public CompareLines(TradeKnowledge knowledge, RigOptions options)
    {
        (_knowledge, _options) = (knowledge, options);
        var reader = new LineSpecReader(knowledge, needsTest: true);
        _line = CommandOption.Required("line", "The first line", reader);
        _with = CommandOption.Optional("with", "The second line; otherwise nylon of the same test", reader);
        Info = new(
            "line compare", "Two lines side by side: thickness, stretch, water, frost, cost of a season",
            "/line compare line:\"braid 6lb\" with:\"nylon 6lb\" depth:30ft", [_line, _with, options.Depth])
        {
            NeedsNoCrew = true,
        };
    }

    public CommandInfo Info { get; }

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(Answer(request));

    private Reply Answer(Request request)
    {
        var show = request.Show;
        var first = request.Get(_line).Choice;
        var assumed = new List<string>();
        if (!request.TryGet(_with, out var spec))
        {
            var partner = _knowledge.Lines[first.Material.Key == "nylon" ? "braid" : "nylon"];
            if (!partner.Table.Covers(first.Test))
            {
                return Reply.Refuse($"with is missing: {partner.Name} of {show.Test(first.Test)} is not in the table. Give {_with.Accepts}.");
            }

            spec = new LineSpec(partner, partner.Table.DiameterAt(first.Test), first.Test, null);
            assumed.Add($"{partner.Name} of the same test");
        }

        var depth = request.GetOr(_options.Depth, UsualDepth);
        if (!request.Has(_options.Depth))
        {
            assumed.Add($"{show.Depth(depth)} of water");
        }

        return Compare(request, first, spec.Choice, depth, assumed);
    }

    private Reply Compare(Request request, LineChoice first, LineChoice second, Length depth, List<string> assumed)
    {
        var show = request.Show;
        var lines = new List<string>
        {
            $"Thickness: {Name(first, show)} is {Showing.Fine(first.Diameter)}, {Name(second, show)} {Showing.Fine(second.Diameter)}{AsThick(first, second.Material, show)}.",
            $"Stretch: at {show.Depth(depth)} a {show.Pull(HookSet)} set gives {show.Gap(StretchOf(first, depth))} against {show.Gap(StretchOf(second, depth))}; {Share(first, depth)} and {Share(second, depth)} of the lift gets there.",
            $"Season: {show.Reel(OnReel)} cost about {Season(first):0.00} against {Season(second):0.00} a season (example prices, your money).",
            $"{RigWords.Sentence(first.Material.Name)} in frost: {first.Material.InFrost}",
        };
        if (first.Material.Key != second.Material.Key)
        {
            lines.Add($"{RigWords.Sentence(second.Material.Name)} in frost: {second.Material.InFrost}");
        }

        lines.AddRange(Understanding.Of(request, assumed));
        return new Reply
        {
            Headline = $"{RigWords.Sentence(Name(first, show))} against {Name(second, show)}",
            Lines = lines,
            Figures = [RigFigures.Depth.Of(depth), .. Figures(first, depth, ""), .. Figures(second, depth, "line2.")],
            Reasons =
            [
                $"Stretch is F L / (E A) with the modulus in the middle of its range: {Modulus(first)}; {Modulus(second)}.",
                $"What the labels make of the material: {Strength(first)}; {Strength(second)}.",
                "A lift of the rod is 60 cm; labels are not breaking loads, and charts differ by a tenth.",
                .. new[] { first.Material, second.Material }.Distinct().Select(material => $"{RigWords.Sentence(material.Name)}: {material.Source}."),
            ],
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private IEnumerable<Figure> Figures(LineChoice line, Length depth, string prefix)
    {
        yield return RigFigures.LineTest.Of(line.Test, prefix);
        yield return RigFigures.LineDiameter.Of(line.Diameter, prefix);
        if (line.Material.Table.SameThicknessIn(_knowledge.Lines["nylon"].Table, line.Test) is { } nylon)
        {
            yield return RigFigures.NylonEquivalent.Of(nylon, prefix);
        }

        yield return RigFigures.StretchOfLine.Of(StretchOf(line, depth), prefix);
        yield return RigFigures.LiftShare.Of(LiftOf(line, depth), prefix);
        yield return RigFigures.CostPerSeason.Of(Season(line), prefix);
        yield return RigFigures.WaterUptake.Of(line.Material.WaterUptakePercent.High, prefix);
        if (line.Material.RefractiveIndex is { } index)
        {
            yield return RigFigures.Reflectance.Of(Core.Lines.Reflectance.AtNormalIncidence(index), prefix);
        }
    }

    private static string AsThick(LineChoice line, LineMaterial other, Showing show) =>
        line.Material.Key != other.Key && line.Material.Table.SameThicknessIn(other.Table, line.Test) is { } same
            ? $": about as thick as {show.Test(same)} {other.Name}"
            : "";

    private static string Name(LineChoice line, Showing show) => $"{show.Test(line.Test)} {line.Material.Name}";

    private static string Share(LineChoice line, Length depth) => $"{LiftOf(line, depth).Percent:0} %";

    private static Length StretchOf(LineChoice line, Length depth) => Stretch.Of(line.Elastic, HookSet, depth);

    private static Ratio LiftOf(LineChoice line, Length depth) => Stretch.ShareReachingLure(line.Elastic, HookSet, depth, Lift);

    private static string Modulus(LineChoice line) =>
        $"{line.Material.Name} {line.Material.Modulus.Low.Gigapascals:0.#} to {line.Material.Modulus.High.Gigapascals:0.#} GPa";

    private static string Strength(LineChoice line) =>
        $"{line.Material.Name} {TensileStrength.ImpliedBy(line.Test, line.Diameter, line.Material.SolidFraction).Megapascals:0} MPa";

    // The middle of the price band over the middle of its life.
    private static double Season(LineChoice line)
    {
        var material = line.Material;
        var price = (decimal)(material.PricePer100Metres.Low + material.PricePer100Metres.High) / 2 / 100;
        return (double)SeasonCost.PerSeason(price, OnReel, (decimal)(material.LifeSeasons.Low + material.LifeSeasons.High) / 2);
    }
}
