using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>Answers <c>/rig spread</c>: a job for every hole of a crew, and what the others do after a hit.</summary>
public sealed class SpreadCrew : ICommandHandler
{
    private readonly RigOptions _options;
    private readonly RigPlanner _planner;
    private readonly RigSpread _spread;
    private readonly CommandOption<int> _hit;

    public SpreadCrew(RigOptions options, RigShorthand shorthand, RigPlanner planner, RigSpread spread)
    {
        (_options, _planner, _spread) = (options, planner, spread);
        _hit = CommandOption.Optional("hit", "Number of the hole that had a hit", new WholeNumberReader(1, RigOptions.MostHoles));
        Info = new(
            "rig spread", "Give each hole of the crew a job, so that together you cover mood, depth and presentation",
            "/rig spread species:walleye depth:24ft holes:6",
            [.. options.ForPlanning.Where(option => option != options.Presentation && option != options.Step && option != options.Lines), options.Holes, _hit])
        {
            NeedsNoCrew = true,
            Shorthand = shorthand,
        };
    }

    public CommandInfo Info { get; }

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(Answer(request));

    private Reply Answer(Request request)
    {
        var question = RigQuestion.From(request, _options);
        var assumed = question.Assumed.Where(named => named != "one line").ToList();
        var holes = request.GetOr(_options.Holes, 4);
        if (!request.Has(_options.Holes))
        {
            assumed.Add("4 holes");
        }

        var hit = request.GetOr(_hit, 0);
        if (hit > holes)
        {
            return Reply.Refuse($"hit: there is no hole {hit} of {holes}.");
        }

        if (_spread.ShareOut(question.Ask, holes) is not { } jobs)
        {
            return Reply.Refuse($"No rig: {_planner.Plan(question.Ask).Obstacle?.ToString(request.Show)}.");
        }

        return Holes(request, question.Ask, hit > 0 ? RigSpread.AfterHit(jobs, hit - 1) : jobs, hit, assumed);
    }

    private static Reply Holes(Request request, RigAsk ask, IReadOnlyList<HoleJob> jobs, int hit, List<string> assumed)
    {
        var show = request.Show;
        var lines = jobs
            .Select((job, index) => (job, number: index + 1))
            .GroupBy(hole => (hole.job.Job, hole.job.Depth.Meters, Rig: RigWords.Brief(hole.job.Rig, show)))
            .Select(same => $"{Numbers([.. same.Select(hole => hole.number)])}: {NameOf(same.Key.Job)} at {show.Depth(same.First().job.Depth)}, {same.Key.Rig}.")
            .ToList();
        if (jobs.Count > 1)
        {
            lines.Add(hit > 0
                ? $"Hole {hit} keeps on as it is; one caller keeps calling, set lines stay."
                : "A hit? Ask again with the number of its hole, such as hit:2, and the others get a change.");
        }

        lines.AddRange(Understanding.Of(request, assumed));
        return new Reply
        {
            Headline = hit > 0
                ? $"Hit in hole {hit}: the others come over to {jobs[hit - 1].Rig.Presentation.Name} at {show.Depth(jobs[hit - 1].Depth)}"
                : $"{Counted.Of(jobs.Count, "hole")} for {ask.Species.Name}, {RigWords.Word(ask.Mood)}",
            Lines = lines,
            Figures = [.. jobs.SelectMany((job, index) => FiguresOf(job, $"hole{index + 1}."))],
            Reasons = [.. jobs.DistinctBy(job => job.Job).Select(job => $"{RigWords.Sentence(NameOf(job.Job))}: {job.Rig.Reasons[0].Why.ToString(show)}")],
            Cautions = RigWords.CautionsOf(ask, [.. jobs.Select(job => job.Rig).Distinct()], show),
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private static IEnumerable<Figure> FiguresOf(HoleJob job, string prefix) =>
    [
        RigFigures.Depth.Of(job.Depth, prefix),
        RigFigures.LureWeight.Of(job.Rig.Lure.Weight, prefix),
        RigFigures.LineTest.Of(job.Rig.Tied.Mainline.Test, prefix),
    ];

    private static string Numbers(int[] numbers) => numbers.Length == 1 ? $"Hole {numbers[0]}" : $"Holes {string.Join(", ", numbers)}";

    private static string NameOf(SpreadJob job) => job switch
    {
        SpreadJob.Caller => "caller",
        SpreadJob.Sitter => "sitter",
        SpreadJob.DepthStep => "depth step",
        _ => "set line",
    };
}
