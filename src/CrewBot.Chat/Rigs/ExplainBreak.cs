using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Rigs;

/// <summary>Answers <c>/rig broke</c>: what a broken end says, and what to change on the next rig.</summary>
public sealed class ExplainBreak(TradeKnowledge knowledge) : ICommandHandler
{
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

    public CommandInfo Info { get; } = new(
        "rig broke", "A break-off looked at: the end names the likely link and the next rig's fix",
        "/rig broke place:join end:curl", [Place, Look])
    {
        NeedsNoCrew = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var (place, look) = (request.Get(Place), request.Get(Look));
        var sign = knowledge.BreakSigns.FirstOrDefault(known => known.Place == place && known.Look == look);
        return Task.FromResult(sign is null ? Unlikely(place) : Answer(request, sign));
    }

    private static Reply Answer(Request request, BreakSign sign)
    {
        return new Reply
        {
            Headline = sign.Name,
            Lines = [$"Likely: {sign.Cause}", $"Next time: {sign.Fix}"],
            Reasons = [$"Source: {sign.Source}."],
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private Reply Unlikely(BreakPlace place)
    {
        var looks = knowledge.BreakSigns.Where(known => known.Place == place).Select(known => known.Look.ToString().ToLowerInvariant()).Distinct();
        return Reply.Refuse($"end: that is not seen there. At that place: {string.Join(", ", looks)}.");
    }
}
