using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Lines;
using UnitsNet;

namespace CrewBot.Chat.Lines;

/// <summary>Answers <c>/line spool</c>: how much line a spool takes, and how much backing under it.</summary>
public sealed class FillSpool : ICommandHandler
{
    private const double StopAt = 0.95;

    private readonly CommandOption<SpoolSpec> _capacity;
    private readonly CommandOption<Length> _new;
    private readonly CommandOption<Length> _top;
    private readonly CommandOption<Length> _backing;

    public FillSpool(TradeKnowledge knowledge)
    {
        var thickness = new LineOrDiameterReader(new LineSpecReader(knowledge, needsTest: false));
        _capacity = CommandOption.Required("capacity", "What the reel says it holds", new SpoolSpecReader());
        _new = CommandOption.Required("new", "The line to put on, by diameter or by name", thickness);
        _top = CommandOption.Optional("top", "How much of it you want, over backing", QuantityReaders.LineLength);
        _backing = CommandOption.Optional("backing", "The backing, by diameter or by name", thickness);
        Info = new(
            "line spool", "How much line a spool takes, and how much backing under it",
            "/line spool capacity:\"120m 0.22mm\" new:0.18mm", [_capacity, _new, _top, _backing])
        {
            NeedsNoCrew = true,
        };
    }

    public CommandInfo Info { get; }

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(Answer(request));

    private Reply Answer(Request request)
    {
        var show = request.Show;
        var spool = request.Get(_capacity);
        var rated = new LineOnSpool(spool.Length, spool.Diameter);
        var diameter = request.Get(_new);
        var full = SpoolFill.LengthOf(rated, diameter, fill: 1);
        var reply = new Reply
        {
            Headline = $"{show.Reel(full)} of {Showing.Fine(diameter)} line fills it",
            Lines =
            [
                $"Stop: at about {show.Reel(full * StopAt)}, a twentieth short of the rim, or coils fall off.",
                "Braid packs as it likes: take a tenth either way.",
            ],
            Figures = [RigFigures.SpoolLength.Of(full), RigFigures.LineDiameter.Of(diameter)],
            Actions = ReplyAction.WhyAndShare(request),
            Reasons = ["Equal volume: new length is rated length times (rated diameter / new diameter) squared."],
        };
        return request.TryGet(_top, out var top) ? WithBacking(request, reply, rated, new LineOnSpool(top, diameter)) : reply;
    }

    private Reply WithBacking(Request request, Reply reply, LineOnSpool rated, LineOnSpool top)
    {
        var show = request.Show;
        var thickness = request.GetOr(_backing, rated.Diameter);
        return SpoolFill.BackingUnder(rated, top, thickness, fill: 1) is { } backing
            ? reply with
            {
                Headline = $"{show.Reel(backing)} of {Showing.Fine(thickness)} backing under {show.Reel(top.Length)} of {Showing.Fine(top.Diameter)}",
                Figures = [.. reply.Figures, RigFigures.SpoolBacking.Of(backing)],
                Lines =
                [
                    .. request.Has(_backing) ? [] : new[] { $"Assumed: {Showing.Fine(thickness)} backing, as the reel is rated." },
                    .. reply.Lines.Skip(1),
                ],
            }
            : Reply.Refuse($"top: {show.Reel(top.Length)} alone overfills it; {show.Reel(SpoolFill.LengthOf(rated, top.Diameter, StopAt))} is what fits.");
    }
}
