using CrewBot.Chat.Commands;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>Answers <c>/rig pair</c>: a line that calls fish in and one beside it that they eat.</summary>
public sealed class PairRigs(RigOptions options, RigShorthand shorthand, RigPlanner planner, RigPairing pairing) : ICommandHandler
{
    private const int UsualLines = 2;

    public CommandInfo Info { get; } = new(
        "rig pair", "Two lines that work together: one calls fish in, one beside it they eat",
        "/rig pair species:walleye depth:24ft mood:neutral lines:2",
        [.. options.ForPlanning.Where(option => option != options.Presentation && option != options.Step)])
    {
        NeedsNoCrew = true,
        Shorthand = shorthand,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var question = RigQuestion.From(request, options);
        var lines = AllowedLines(request, question, out var assumed);
        return Task.FromResult(pairing.Plan(question.Ask, lines) is { } pair
            ? Answer(request, question.Ask, pair, lines, assumed)
            : Reply.Refuse($"No rig: {planner.Plan(question.Ask).Obstacle?.ToString(request.Show)}."));
    }

    // Asking for a pair assumes two lines, unless someone said otherwise or the water's rules do.
    private int AllowedLines(Request request, RigQuestion question, out List<string> assumed)
    {
        assumed = [.. question.Assumed];
        if (request.Has(options.Lines) || question.Ask.Rules?.Lines is not null)
        {
            return question.Lines;
        }

        assumed[^1] = "two lines, if your regulations allow them";
        return UsualLines;
    }

    private static Reply Answer(Request request, RigAsk ask, RigPair pair, int lines, List<string> assumed)
    {
        var show = request.Show;
        var said = new List<string>();
        if (lines == 1)
        {
            said.Add("One line is allowed here, so this is the one to fish.");
            said.AddRange(RigWords.LinesOf(ask, pair.Caller, show).Take(5));
        }
        else
        {
            said.AddRange(TwoLines(ask, "Caller", pair.Caller, request));
            said.AddRange(pair.Sitter is { } sitter
                ? TwoLines(ask, "Sitter", sitter, request)
                : ["Sitter: nothing passive fits these conditions; fish the caller again, slower."]);
            said.Add($"Holes: {show.Gap(pair.Spacing)} apart, both in view; when one comes in and won't eat, stop the caller and let the sitter do it.");
        }

        if (pair.SetLines.Count > 0)
        {
            said.Add($"Set: {pair.SetLines.Count} more under tip-ups or on set rods, {show.Depth(pair.SetSpacing)} off: {RigWords.Brief(pair.SetLines[0], show)}.");
        }

        said.AddRange(Understanding.Of(request, assumed));
        return new Reply
        {
            Headline = lines == 1
                ? $"{RigWords.Sentence(ask.Species.Name)}, {RigWords.Word(ask.Mood)}, {show.Depth(ask.Depth)}: one line, {pair.Caller.Presentation.Name}"
                : $"{RigWords.Sentence(ask.Species.Name)}, {RigWords.Word(ask.Mood)}, {show.Depth(ask.Depth)}: {pair.Caller.Presentation.Name} calls, {pair.Sitter?.Presentation.Name ?? "no sitter"} sits",
            Lines = said,
            Figures = new WhenRead<Figure>(() => Figures(ask, pair)),
            Reasons = new WhenRead<string>(() => Reasons(pair, request)),
            Cautions = RigWords.CautionsOf(ask, [.. RigsOf(pair)], show),
            Pictures = [Picture.Of("rig-pair", request, () => RigPictures.Of(ask, pair, request))],
            Actions = [ReplyAction.Picture(request), .. ReplyAction.WhyAndShare(request)],
        };
    }

    private static string[] TwoLines(RigAsk ask, string job, Rig rig, Request request) =>
    [
        $"{job}: {RigWords.TieOn(rig, request.Show)}; {RigWords.LineOf(rig.Tied, request.Show)}.",
        $"{job} work: {rig.Presentation.Work[ask.Mood]}",
    ];

    private static IEnumerable<Rig> RigsOf(RigPair pair) =>
        [pair.Caller, .. pair.Sitter is { } sitter ? [sitter] : Array.Empty<Rig>(), .. pair.SetLines];

    private static IEnumerable<Figure> Figures(RigAsk ask, RigPair pair) =>
    [
        .. RigFigures.Of(ask, pair.Caller),
        RigFigures.Spacing.Of(pair.Spacing),
        .. RigsOf(pair).SelectMany((rig, index) => RigFigures.Of(rig, index == 0 ? "" : $"line{index + 1}.")),
    ];

    private static IEnumerable<string> Reasons(RigPair pair, Request request) => RigsOf(pair)
        .SelectMany((rig, index) => rig.Reasons.Select(reason =>
            $"Line {index + 1}, {reason.About}: {reason.Why.ToString(request.Show)}"));
}
