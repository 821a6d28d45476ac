using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/lines down</c>: starts counting line-hours.</summary>
public sealed class LinesDown(CatchOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "lines down", "Your lines are in the water: line-hours count from here", "/lines down lines:2 presentation:\"jigging spoon\"",
        [options.Lines, options.Presentation, options.Water, options.Mood, options.Depth, options.When, options.More])
    {
        FromAnywhere = true,
        AlsoSaid = ["lines in", "lines out", "drop lines"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var spells = new LineSpellRepository(session);
            var waters = new WaterRepository(session);
            var at = request.GetOr(options.When, Moment.Now).From(request.At, request.Caller.Zone);
            if (at > request.At)
            {
                return Reply.Refuse(Moment.StillToCome(at, "they went down", request));
            }

            if (!request.Has(options.More) && await spells.OpenOfAsync(member.Id) is [var first, ..] down)
            {
                var count = down.Sum(spell => spell.Lines);
                return Reply.Refuse(
                    $"You have {Counted.Of(count, "line")} down since {Moment.Show(first.DownAt, request.At)}: take them up with /lines up, or add to them with more:yes.");
            }

            var lines = request.GetOr(options.Lines, 1);
            var presentation = request.GetOr(options.Presentation, null!);
            var water = request.GetOr(options.Water, null!);
            long? waterId = water is null ? null : await waters.FindAsync(water.Name) ?? await waters.AddAsync(water.Name);
            string? mood = request.TryGet(options.Mood, out var willing) ? willing.ToString().ToLowerInvariant() : null;
            ExactLength? depth = request.TryGet(options.Depth, out var deep) ? deep : null;
            await spells.AddAsync(member.Id, waterId, presentation?.Key, lines, at, mood, depth);
            var open = await spells.OpenOfAsync(member.Id);
            string?[] what =
            [
                presentation?.Name, water?.Name, mood is null ? null : $"{mood} mood",
                depth is { } under ? CatchWords.Depth(under, request) : null,
            ];
            var details = string.Join(", ", what.OfType<string>());
            return new Reply
            {
                Headline = $"{Counted.Of(lines, "line")} down since {Moment.Show(at, request.At)}{(details.Length > 0 ? $": {details}" : "")}",
                Lines =
                [
                    .. request.Has(options.Lines) ? [] : (string[])["Assumed: one line."],
                    .. open.Count > 1 ? (string[])[$"You have {open.Sum(spell => spell.Lines)} lines down in all."] : [],
                ],
                Cautions = water?.Lines is { } allowed && open.Sum(spell => spell.Lines) is var all && all > allowed
                    ? [$"Check the lines that one angler may fish on {water.Name}: {allowed}, as your crew filled in; you have {all} down."]
                    : [],
                Actions = [new("Lines up", ActionKind.Run, "lines up")],
            };
        }, cancellationToken);
}
