using CrewBot.Chat.Commands;
using CrewBot.Chat.Lines;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CrewBot.Storage.Breaks;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>Answers <c>/rig check</c>: where a tied rig gives way, what drag to set, and what is wrong, worst first.</summary>
public sealed class CheckRig : ICommandHandler
{
    private const int MostFaultsShown = 4; // a phone shows eight lines, and four follow

    private readonly TradeKnowledge _knowledge;
    private readonly CrewBook _book;
    private readonly RigOptions _options;
    private readonly CommandOption<LineSpec> _mainline;
    private readonly CommandOption<LineSpec> _leader;
    private readonly CommandOption<Knot> _join;
    private readonly CommandOption<Knot> _knot;
    private readonly CommandOption<IReadOnlyList<Hardware>> _hardware;
    private readonly CommandOption<Lure> _lure;
    private readonly CommandOption<HookRating> _hook;
    private readonly CommandOption<Species> _species;

    public CheckRig(TradeKnowledge knowledge, RigOptions options, CrewBook book)
    {
        (_knowledge, _options, _book) = (knowledge, options, book);
        var knots = new RecordReader<Knot>(knowledge.Knots, "a knot");
        _mainline = CommandOption.Required("mainline", "Line on the reel", new LineSpecReader(knowledge, needsTest: true));
        _leader = CommandOption.Optional("leader", "Leader, with its length if you know it", new LineSpecReader(knowledge, needsTest: true));
        _join = CommandOption.Optional("join", "Knot between mainline and leader or swivel", knots);
        _knot = CommandOption.Optional("knot", "Knot at the lure", knots);
        _hardware = CommandOption.Optional(
            "hardware", "Swivel, snap or split ring with its size, such as swivel size 10",
            new ListReader<Hardware>(new RecordReader<Hardware>(knowledge.Hardware, "a swivel, snap or split ring with its size"), most: 4));
        _lure = CommandOption.Optional("lure", "Lure with its weight, such as 1/4oz jigging spoon", new LureReader(knowledge));
        _hook = CommandOption.Optional("hook", "Hook size, such as 6 or 1/0", new RecordReader<HookRating>(knowledge.Hooks, "a hook size"));
        _species = CommandOption.Optional(options.Species.Name, options.Species.Description, options.Species.Reader);
        Info = new(
            "rig check", "Look at a rig that is tied: where it breaks, what drag to set, what else is wrong",
            "/rig check mainline:\"braid 6lb\" leader:\"fluorocarbon 8lb 24in\" join:\"double uni\" knot:palomar species:walleye",
            [_mainline, _leader, _join, _knot, _hardware, _lure, _hook, _species, options.Size, options.Depth, options.Current, options.Water])
        {
            NeedsNoCrew = true,
        };
    }

    public CommandInfo Info { get; }

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var assumed = new List<string>();
        var tied = Tied(request, assumed);
        var parted = await _book.ReadOrAsync(request, session => new BreakOffRepository(session).MeasuredAsync(), [], cancellationToken);
        var (rig, own) = OwnKnots.In(tied, new CrewKnots(parted));
        var situation = new RigSituation
        {
            Species = request.GetOr(_species, null!),
            Size = request.GetOr(_options.Size, FishSize.Typical),
            Depth = request.TryGet(_options.Depth, out var depth) ? depth : null,
            Current = request.GetOr(_options.Current, Speed.Zero),
            Water = request.GetOr(_options.Water, Temperature.FromDegreesCelsius(4)),
        };
        var verdict = RigChecker.Check(rig, situation);
        return Answer(request, rig, own, situation, verdict, assumed);
    }

    private TiedRig Tied(Request request, List<string> assumed)
    {
        Knot Knot(CommandOption<Knot> option, string usual, string place)
        {
            if (request.TryGet(option, out var given))
            {
                return given;
            }

            assumed.Add($"{_knowledge.Knots[usual].Name} at the {place}");
            return _knowledge.Knots[usual];
        }

        var hardware = request.GetOr(_hardware, []);
        var leader = request.TryGet(_leader, out var spec) ? spec : null;
        if (leader is null && request.Has(_join))
        {
            assumed.Add("no leader, so nothing is joined");
        }

        var bite = leader?.Material.Use == LineUse.Bite;
        var swivel = hardware.Any(piece => piece.Kind == HardwareKind.Swivel);
        return new TiedRig
        {
            Mainline = request.Get(_mainline).Choice,
            Leader = leader is null ? null : new Leader(leader.Choice, leader.Length ?? Length.FromInches(24)),
            Join = leader is null ? null : Knot(_join, swivel || bite ? "palomar" : "double-uni", "join"),
            LureKnot = Knot(_knot, bite ? "crimp" : "improved-clinch", "lure"),
            Hardware = hardware,
            Lure = request.GetOr(_lure, null!),
            Hook = request.GetOr(_hook, null!),
        };
    }

    private static Reply Answer(
        Request request, TiedRig rig, IReadOnlyList<OwnKnot> own, RigSituation situation, RigVerdict verdict, List<string> assumed)
    {
        var show = request.Show;
        var faults = verdict.Faults.Select(fault => $"{fault.What.ToString(show)} {fault.Fix.ToString(show)}").ToList();
        var shown = own.Count > 0 ? MostFaultsShown - 1 : MostFaultsShown;
        var lines = faults.Take(shown).Select((fault, index) => $"{index + 1}. {fault}").ToList();
        if (faults.Count > shown)
        {
            lines.Add($"And {faults.Count - shown} more behind Why.");
        }

        lines.Add($"Breaks: at {verdict.Weakest.Place}, between {show.Pulls(verdict.Weakest.Low, verdict.Weakest.High)}; {verdict.Lost}.");
        lines.AddRange(own.Take(1).Select(knot => knot.Told));
        lines.Add($"Drag: {show.Pulls(verdict.Drag.Low, verdict.Drag.High)} on a hand scale.");
        lines.AddRange(Understanding.Of(request, assumed));
        return new Reply
        {
            Headline = faults.Count switch
            {
                0 => $"Holds together: {RigWords.LineOf(rig, show)}",
                1 => "One thing wrong with that rig",
                _ => $"{faults.Count} things wrong with that rig, worst first",
            },
            Lines = lines,
            Figures = [.. Figures(rig, situation, verdict), .. own.Take(1).SelectMany(knot => knot.Figures)],
            Reasons =
            [
                .. faults.Skip(shown),
                .. own.Skip(1).Select(knot => knot.Told),
                .. RigStrength.LinksOf(rig).Select(link => $"{RigWords.Sentence(link.Place)}: {show.Pulls(link.Low, link.High)}"),
                "The smallest link rules; knots don't multiply. Ranges count against the label; drag is a quarter to a third of the low end (common practice).",
            ],
            Pictures = [Picture.Of("rig-check", request, () => RigPictures.Of(rig, verdict, request))],
            Actions = [ReplyAction.Picture(request), .. ReplyAction.WhyAndShare(request)],
        };
    }

    private static IEnumerable<Figure> Figures(TiedRig rig, RigSituation situation, RigVerdict verdict)
    {
        yield return RigFigures.LineTest.Of(rig.Mainline.Test);
        yield return RigFigures.LineDiameter.Of(rig.Mainline.Diameter);
        if (rig.Leader is { } leader)
        {
            yield return RigFigures.LeaderTest.Of(leader.Line.Test);
            yield return RigFigures.LeaderLength.Of(leader.Length);
        }

        if (rig.Lure is { } lure)
        {
            yield return RigFigures.LureWeight.Of(lure.Weight);
        }

        if (situation.Depth is { } depth)
        {
            yield return RigFigures.Depth.Of(depth);
        }

        yield return RigFigures.WeakestLow.Of(verdict.Weakest.Low);
        yield return RigFigures.WeakestHigh.Of(verdict.Weakest.High);
        yield return RigFigures.DragLow.Of(verdict.Drag.Low);
        yield return RigFigures.DragHigh.Of(verdict.Drag.High);
    }
}
