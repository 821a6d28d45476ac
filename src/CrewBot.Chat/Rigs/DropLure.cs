using CrewBot.Chat.Commands;
using CrewBot.Chat.Lines;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>Answers <c>/rig drop</c>: how fast a lure sinks, when it is down, where a current takes it.</summary>
public sealed class DropLure : ICommandHandler
{
    private readonly RigOptions _options;
    private readonly TradeKnowledge _knowledge;
    private readonly CommandOption<Mass> _weight;
    private readonly CommandOption<LureMaterial> _material;
    private readonly CommandOption<Density> _density;
    private readonly CommandOption<FallShape> _shape;
    private readonly CommandOption<Length> _lineOut;
    private readonly CommandOption<LineSpec?> _line;

    public DropLure(TradeKnowledge knowledge, RigOptions options)
    {
        (_knowledge, _options) = (knowledge, options);
        _weight = CommandOption.Required("weight", "What the lure weighs", QuantityReaders.LureWeight);
        _material = CommandOption.Optional(
            "material", "What it is made of", new RecordReader<LureMaterial>(knowledge.LureMaterials, "a metal"));
        _density = CommandOption.Optional("density", "Its density, if it is no plain metal", QuantityReaders.LureDensity);
        _shape = CommandOption.Optional("shape", "Ball, or how it is fished", new FallShapeReader(knowledge.Presentations));
        _lineOut = CommandOption.Optional("line-out", "Line already out, in a current", QuantityReaders.LineLength);
        _line = CommandOption.Optional("line", "Line it hangs on, or none", new LineOrNoneReader(new LineSpecReader(knowledge, needsTest: false)));
        Info = new(
            "rig drop", "How fast a lure sinks, when it is down, where a current takes it",
            "/rig drop weight:1/8oz material:tungsten depth:30ft line:\"braid 6lb\"",
            [_weight, _material, _density, _shape, options.Depth, _lineOut, options.Water, _line, options.Current])
        {
            NeedsNoCrew = true,
        };
    }

    public CommandInfo Info { get; }

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(Answer(request));

    private Reply Answer(Request request)
    {
        if (request.Has(_material) && request.Has(_density))
        {
            return Reply.Refuse("material and density say the same thing: keep one.");
        }

        if (request.Has(_options.Depth) == request.Has(_lineOut))
        {
            return Reply.Refuse(request.Has(_lineOut)
                ? "depth and line-out can't both be fixed: keep one."
                : $"depth is missing. Give {_options.Depth.Accepts}; or line-out in a current.");
        }

        var assumed = new List<string>();
        var material = Or(request, _material, _knowledge.LureMaterials["lead"], request.Has(_density) ? null : "lead", assumed);
        var shape = Or(request, _shape, FallShape.Ball, "a ball", assumed);
        var water = Or(request, _options.Water, Temperature.FromDegreesCelsius(4), $"{request.Show.Degrees(Temperature.FromDegreesCelsius(4))} water", assumed);
        var braid = _knowledge.Lines["braid"];
        var six = Force.FromPoundsForce(6);
        var line = Or(request, _line, new LineSpec(braid, braid.Table.DiameterAt(six), six, null), $"{request.Show.Test(six)} braid", assumed);
        var current = request.GetOr(_options.Current, Speed.Zero);
        if (request.Has(_lineOut) && current.MetersPerSecond == 0)
        {
            return Reply.Refuse($"line-out needs a current. Give current, {_options.Current.Accepts}.");
        }

        var density = request.GetOr(_density, material.Density);
        var fall = new DropAnswer(
            new SinkingBody(request.Get(_weight), density, shape.Fall.Low),
            new SinkingBody(request.Get(_weight), density, shape.Fall.High),
            line, water, current, request.Has(_density) ? $"{density.GramsPerCubicCentimeter:0.##} g/cm3" : material.Name, shape);
        return request.TryGet(_options.Depth, out var depth)
            ? fall.ToDepth(request, depth, assumed)
            : fall.WithLineOut(request, request.Get(_lineOut), assumed);
    }

    private static T Or<T>(Request request, CommandOption<T> option, T otherwise, string? named, List<string> assumed)
    {
        if (request.TryGet(option, out var given))
        {
            return given;
        }

        if (named is not null)
        {
            assumed.Add(named);
        }

        return otherwise;
    }
}
