using CrewBot.Chat.Boxes;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Learning;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>Answers <c>/rig plan</c>: one complete rig, up to two others, and why.</summary>
public sealed class PlanRig(
    RigOptions options, RigShorthand shorthand, RigPlanner planner, PurchaseAdviser adviser, ExperienceDesk experience, TackleDesk boxes) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "rig plan", "What to tie on, right now, for this fish, this depth, this mood",
        "/rig plan species:walleye depth:24ft mood:negative", [.. options.ForPlanning, options.Mainline, options.From])
    {
        NeedsNoCrew = true,
        Shorthand = shorthand,
        OnMessage = new("Plan a rig") { Text = options.Ask, Fields = [options.Species, options.Depth, options.Mood] },
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var isFromBox = request.Has(options.From);
        if (isFromBox && request.Caller.Crew is null)
        {
            return Reply.Refuse("from:box works inside a crew's own chat: that is where your box is kept.");
        }

        var asked = RigQuestion.From(request, options, isFromBox ? await boxes.OfAsync(request, cancellationToken) : null);
        var learned = await experience.OfAsync(request, asked.Ask.Species, asked.Ask.Mood, cancellationToken);
        var question = asked with { Ask = asked.Ask with { Experience = learned } };
        var planning = planner.Plan(question.Ask);
        var purchase = isFromBox ? adviser.Advise(question.Ask) : null;
        return (planning.Plan, purchase) switch
        {
            ({ } plan, _) => Answer(request, question, plan, purchase),
            (null, { } buy) => Reply.Refuse(PurchaseWords.Missing(question.Ask, buy, request.Show)),
            _ => Reply.Refuse($"No rig: {planning.Obstacle!.ToString(request.Show)}."),
        };
    }

    private Reply Answer(Request request, RigQuestion question, RigPlan plan, Purchase? purchase)
    {
        var (ask, show, first) = (question.Ask, request.Show, plan.First);
        var lines = RigWords.LinesOf(ask, first, show);
        var others = plan.Alternatives.Count > 0 ? $"Or: {string.Join("; or ", plan.Alternatives.Select(rig => RigWords.Brief(rig, show)))}." : null;
        // A phone shows eight lines: what to buy with a box, or how to log, takes the place of what else to tie.
        var instead = Landed(request, ask.Species) ?? (ask.Tackle is null ? null : PurchaseWords.Next(purchase, show));
        if ((instead ?? (ask.Tackle is null ? others : null)) is { } line)
        {
            lines.Add(line);
        }

        lines.AddRange(Understanding.Of(request, question.Assumed));
        return new Reply
        {
            Headline = $"{RigWords.Sentence(ask.Species.Name)}, {RigWords.Word(ask.Mood)}, {show.Depth(ask.Depth)}: {first.Presentation.Name}{(ask.OutfishedBy(first.Presentation) is null ? "" : ", your crew's best")}{(ask.Tackle is null ? "" : ", from your box")}",
            Lines = lines,
            Figures = new WhenRead<Figure>(() => FiguresOf(ask, plan)),
            Reasons = new WhenRead<string>(() =>
            [
                .. (ask.Tackle is not null || instead is not null) && others is not null ? (string[])[others] : [],
                .. first.Reasons.Select(reason => $"{RigWords.Sentence(reason.About)}: {reason.Why.ToString(show)}"),
            ]),
            Cautions = RigWords.CautionsOf(ask, [first], show),
            Pictures = [Picture.Of("rig", request, () => RigPictures.Of(ask, first, request))],
            Actions = Actions(request, question, first),
        };
    }

    // "caught a 24 inch pike" asks for no rig: whoever measures a fish and no water has landed it.
    private string? Landed(Request request, Species species) =>
        !request.Has(options.Depth) && request.Expansion?.NotUnderstood.FirstOrDefault(UnitWord.MeasuresFish) is { } length
            ? $"Landed it? No fish is logged by this; to log it: {CommandLine.Write("catch log", [new("species", species.Name), new("length", length)])}"
            : null;

    private static IEnumerable<Figure> FiguresOf(RigAsk ask, RigPlan plan) =>
    [
        .. RigFigures.Of(ask, plan.First),
        .. RigFigures.Of(plan.First, ""),
        .. LearnFigures.Of(ask.Experience, plan.First.Presentation.Key),
        .. plan.Alternatives.SelectMany((rig, index) => RigFigures.Of(rig, $"alt{index + 1}.")),
    ];

    private List<ReplyAction> Actions(Request request, RigQuestion question, Rig rig)
    {
        var actions = new List<ReplyAction>();
        void Offer(string label, string path, params ReadOnlySpan<(CommandOption Option, string? Text)> changes) =>
            actions.Add(new(label, ActionKind.Run, path, Changed(request, changes)));

        var step = question.Ask.Step;
        if (!rig.IsHeaviest && step < 5 && question.Ask.Tackle is null)
        {
            Offer("One up", Info.Path, (options.Presentation, rig.Presentation.Name), (options.Step, $"{step + 1}"));
        }

        if (!rig.IsLightest && step > -5 && question.Ask.Tackle is null)
        {
            Offer("One down", Info.Path, (options.Presentation, rig.Presentation.Name), (options.Step, $"{step - 1}"));
        }

        var mood = question.Ask.Mood;
        if (mood > Mood.Negative)
        {
            Offer("Calmer", Info.Path, (options.Mood, RigWords.Word(mood - 1)), (options.Presentation, null), (options.Step, null));
        }

        if (mood < Mood.Positive)
        {
            Offer("Louder", Info.Path, (options.Mood, RigWords.Word(mood + 1)), (options.Presentation, null), (options.Step, null));
        }

        if (question.Ask is { Place: Place.Open, Air: { } air } && air.DegreesCelsius < 0 && question.Ask.Mainline is null && rig.Tied.Mainline.Material.Key == "braid")
        {
            Offer("Without braid", Info.Path, (options.Without, JoinedTo(request, "braid")));
        }

        Offer("Second line", "rig pair", (options.Presentation, null), (options.Step, null), (options.Mainline, null), (options.From, null), (options.Lines, $"{Math.Max(2, question.Lines)}"));
        actions.Add(ReplyAction.Picture(request));
        actions.AddRange(ReplyAction.WhyAndShare(request));
        return actions;
    }

    private string JoinedTo(Request request, string more) =>
        request.Written.TryGetValue(options.Without.Name, out var already) ? $"{already}, {more}" : more;

    private static Dictionary<string, string> Changed(Request request, ReadOnlySpan<(CommandOption Option, string? Text)> changes)
    {
        var written = new Dictionary<string, string>(request.Written);
        foreach (var (option, text) in changes)
        {
            written.Remove(option.Name);
            if (text is not null)
            {
                written.Add(option.Name, text);
            }
        }

        return written;
    }
}
