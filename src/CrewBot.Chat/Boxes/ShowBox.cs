using CrewBot.Chat.Commands;
using CrewBot.Storage.Boxes;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Boxes;

/// <summary>Answers <c>/box show</c>: what the caller, or the crew, owns.</summary>
public sealed class ShowBox(BoxOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new("box show", "What is in your box, or in everybody's", "/box show whose:crew", [options.Mine])
    {
        FromAnywhere = true,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var mine = request.GetOr(options.Mine, otherwise: true);
        var owned = await book.ReadAsync(
            request,
            async session => !mine ? await new BoxRepository(session).AllAsync()
                : await new MemberRepository(session).FindAsync(request.Caller.Member) is { } member
                    ? await new BoxRepository(session).OfAsync(member.Id)
                    : [],
            cancellationToken);
        return owned.Count == 0
            ? Reply.Refuse($"{(mine ? "Your box is" : "Everybody's box is")} empty. /box add item:\"braid 6lb, hook 6\" puts something in.")
            : new Reply
            {
                Headline = mine ? $"{request.Caller.Name}'s box" : "What the crew owns",
                Lines =
                [
                    .. owned
                        .OrderBy(thing => thing.Gear.Kind)
                        .GroupBy(thing => GearWords.HeadingOf(thing.Gear.Kind))
                        .Select(things => $"{things.Key}: {(mine ? GearWords.Listed(things.Select(thing => thing.Gear)) : ByOwner(things))}."),
                ],
                Figures = [BoxFigures.Count.Of(owned.Count)],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }

    private static string ByOwner(IEnumerable<OwnedGear> things) => string.Join("; ", things
        .GroupBy(thing => (thing.MemberId, thing.Owner))
        .Select(own => $"{own.Key.Owner} {GearWords.Listed(own.Select(thing => thing.Gear))}"));
}
