using CrewBot.Chat.Boxes;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Lines;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CrewBot.Storage;
using CrewBot.Storage.Breaks;
using CrewBot.Storage.Connections;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>
/// Answers <c>/rig broke</c>: what a broken end says, and what to change on the next rig. In a crew it is logged as well, and
/// with knot, line and pull it tells what that crew's knots hold.
/// </summary>
public sealed class ExplainBreak(TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    // Braid holds more than its label, but never that much more: common practice.
    private const double MostOfLabel = 2;

    private static readonly CommandOption<BreakPlace> Place = CommandOption.Required(
        "place", "Where the end is", new ChoiceReader<BreakPlace>(
            [
                ("lure", BreakPlace.AtLure), ("leader", BreakPlace.InLeader), ("join", BreakPlace.AtJoin),
                ("mainline", BreakPlace.InMainline), ("hardware", BreakPlace.AtHardware), ("hook", BreakPlace.AtHook),
            ],
            [("knot", BreakPlace.AtLure), ("swivel", BreakPlace.AtHardware), ("snap", BreakPlace.AtHardware), ("line", BreakPlace.InMainline)]));

    private static readonly CommandOption<BreakLook> Look = CommandOption.Required(
        "end", "How the end looks", new ChoiceReader<BreakLook>(
            [
                ("curl", BreakLook.Curl), ("clean", BreakLook.Clean), ("frayed", BreakLook.Frayed),
                ("flattened", BreakLook.Flattened), ("straightened", BreakLook.Straightened),
            ],
            [("curly", BreakLook.Curl), ("pigtail", BreakLook.Curl), ("cut", BreakLook.Clean), ("fuzzy", BreakLook.Frayed), ("flat", BreakLook.Flattened), ("bent", BreakLook.Straightened)]));

    private static readonly CommandOption<bool> Log = CommandOption.Optional(
        "log", "Keep it for the crew: yes, unless you only ask", new ChoiceReader<bool>([("yes", true), ("no", false)]));

    private readonly CommandOption<Knot> _knot = CommandOption.Optional(
        "knot", "The knot that parted, if one did", new RecordReader<Knot>(knowledge.Knots, "a knot"));

    private readonly CommandOption<LineSpec> _line = CommandOption.Optional(
        "line", "The line that parted, with its test", new LineSpecReader(knowledge, needsTest: true));

    private readonly CommandOption<Force> _pull = CommandOption.Optional(
        "pull", "What a hand scale read when it parted", QuantityReaders.Test);

    public CommandInfo Info => field ??= new(
        "rig broke", "A break-off looked at: the end names the likely link and the next rig's fix",
        "/rig broke place:join end:curl knot:\"double uni\" line:\"braid 6lb\" pull:3.5lb", [Place, Look, _knot, _line, _pull, Log])
    {
        NeedsNoCrew = true,
        AlsoSaid = ["broke off", "broke me off", "line broke", "snapped off", "lost one", "lost him"],
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var (place, look) = (request.Get(Place), request.Get(Look));
        if (knowledge.BreakSigns.FirstOrDefault(known => known.Place == place && known.Look == look) is not { } sign)
        {
            return Unlikely(place);
        }

        if (FaultOf(request, place) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        if (request.Caller.Crew is null || !book.HasPlace || !request.GetOr(Log, otherwise: true))
        {
            return Answer(request, sign, [], []);
        }

        try
        {
            return await book.WriteOnceAsync(request, (session, member) => LogAsync(request, sign, session, member.Id), cancellationToken);
        }
        catch (StorageException refused)
        {
            // What to tie next is needed all the same.
            return Answer(request, sign, [$"Not logged: {refused.Message}"], []);
        }
    }

    private async Task<Reply> LogAsync(Request request, BreakSign sign, CrewSession session, long memberId)
    {
        var breaks = new BreakOffRepository(session);
        var line = request.GetOr(_line, null!);
        var knot = request.GetOr(_knot, null!);
        var number = await breaks.AddAsync(new BreakOff
        {
            MemberId = memberId,
            Place = sign.Place,
            Look = sign.Look,
            BrokeAt = request.At,
            Knot = knot?.Key,
            Line = line?.Material.Key,
            Test = line is null ? null : TestMass.Of(line.Choice.Test, request.Units),
            Pull = request.TryGet(_pull, out var pull) ? TestMass.Of(pull, request.Units) : null,
        });
        var like = await breaks.CountAsync(sign.Place, sign.Look);
        var logged = like == 1 ? $"Logged as break-off {number}: the first such of your crew." : $"Logged as break-off {number}: your crew has seen {like} such.";
        if (knot is null || line is null || !request.Has(_pull))
        {
            return Logged(Answer(request, sign, KnotMayPart(sign.Place) ? [$"{logged} Give knot, line and pull too, and such entries tell what your knots hold."] : [logged], [RigFigures.LikeBreaks.Of(like)]), number);
        }

        var crew = new CrewKnots(await breaks.MeasuredAsync());
        var own = OwnKnot.Of(knot, line.Material, crew);
        var count = crew.CountOf(knot, line.Material);
        return Logged(
            Answer(
                request,
                sign,
                [logged, own?.Told ?? Counted(knot, line.Material, count)],
                [RigFigures.LikeBreaks.Of(like), .. own?.Figures ?? [RigFigures.KnotBreaks.Of(count)]]),
            number);
    }

    private static Reply Logged(Reply answer, long number) => answer with
    {
        Actions =
        [
            .. answer.Actions,
            new("Logged by mistake", ActionKind.Run, "rig unbroke", new Dictionary<string, string> { [VoidBreak.Number.Name] = $"{number}" }),
        ],
    };

    private static string Counted(Knot knot, LineMaterial line, int count) => knot.Efficiency.ContainsKey(line.Key)
        ? $"{RigWords.Sentence(knot.Name)} on {line.Name}: {count} of the {CrewKnots.Enough} break-offs that it takes to know your crew's own range."
        : $"A {knot.Name} is not a knot for {line.Name}: no range is kept of it.";

    private string? FaultOf(Request request, BreakPlace place)
    {
        if (request.TryGet(_knot, out var knot) && !KnotMayPart(place))
        {
            return $"knot: at that place no {knot.Name} parts. Leave it out, or give place:join or place:lure.";
        }

        return request.TryGet(_pull, out var pull) && request.TryGet(_line, out var line) && pull > MostOfLabel * line.Choice.Test
            ? $"pull: {request.Show.Pull(pull)} is more than any {request.Show.Test(line.Choice.Test)} {line.Material.Name} holds. Give what the scale read, such as {request.Show.Pull(line.Choice.Test * 0.6)}."
            : null;
    }

    private static bool KnotMayPart(BreakPlace place) => place is BreakPlace.AtLure or BreakPlace.AtJoin;

    private static Reply Answer(Request request, BreakSign sign, IEnumerable<string> logged, IReadOnlyList<Figure> figures) => new()
    {
        Headline = sign.Name,
        Lines = [$"Likely: {sign.Cause}", $"Next time: {sign.Fix}", .. logged],
        Figures = figures,
        Reasons = [$"Source: {sign.Source}."],
        Actions = [new("Why", ActionKind.Why, request.Path, OnlyAsked(request)), new("Share", ActionKind.Share, request.Path, OnlyAsked(request))],
    };

    // A button asks again, and what broke once is not to be logged twice.
    private static Dictionary<string, string> OnlyAsked(Request request) => new(request.Written) { [Log.Name] = "no" };

    private Reply Unlikely(BreakPlace place)
    {
        var looks = knowledge.BreakSigns.Where(known => known.Place == place).Select(known => known.Look.ToString().ToLowerInvariant()).Distinct();
        return Reply.Refuse($"end: that is not seen there. At that place: {string.Join(", ", looks)}.");
    }
}
