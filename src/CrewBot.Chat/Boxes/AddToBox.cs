using CrewBot.Chat.Commands;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Boxes;

/// <summary>Answers <c>/box add</c>: puts things into the caller's box.</summary>
public sealed class AddToBox(BoxOptions options, CrewBook book) : ICommandHandler
{
    private const int MostOwned = 200;

    public CommandInfo Info { get; } = new(
        "box add", "Put what you own into your box; several things parted by commas",
        "/box add item:\"braid 6lb, fluorocarbon leader 8lb, 1/8oz jigging spoon\"", [options.Items])
    {
        FromAnywhere = true,
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var box = new BoxRepository(session);
            var items = request.Get(options.Items);
            var before = (await box.OfAsync(member.Id)).Count;
            if (before + items.Count > MostOwned)
            {
                return Reply.Refuse($"A box holds {MostOwned} things and yours has {before}: take some out with /box remove.");
            }

            foreach (var gear in items)
            {
                await box.AddAsync(member.Id, gear);
            }

            return new Reply
            {
                Headline = $"In {request.Caller.Name}'s box: {GearWords.Listed(items)}",
                Lines = [.. items.Where(gear => gear.Kind == BoxKind.Line).Take(1).Select(line => $"{line.Name} counts as line on a reel; write \"leader\" with it for leader material.")],
                Figures = [BoxFigures.Count.Of(before + items.Count)],
                Actions = [new("My box", ActionKind.Run, "box show")],
            };
        }, cancellationToken);
}
