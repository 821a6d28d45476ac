using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Boxes;

/// <summary>Answers <c>/box remove</c>: takes one thing out of the caller's box.</summary>
public sealed class RemoveFromBox(BoxOptions options, CrewBook book) : ICommandHandler
{
    private const int NearestShown = 3;

    public CommandInfo Info { get; } = new(
        "box remove", "Take a thing out of your box", "/box remove item:\"braid 6 lb\"", [options.Own])
    {
        FromAnywhere = true,
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var box = new BoxRepository(session);
            var owned = await box.OfAsync(member.Id);
            var said = request.Get(options.Own);
            var meant = Meant(owned, said);
            if (meant.Select(thing => thing.Gear.Name).Distinct().Take(2).Count() != 1)
            {
                return Reply.Refuse(WhyNot(owned, meant, said));
            }

            await box.RemoveAsync(member.Id, meant[0].Number);
            var left = meant.Count - 1;
            return new Reply
            {
                Headline = $"Out of {request.Caller.Name}'s box: {meant[0].Gear.Name}",
                Lines = left > 0 ? [$"{left} more of it left."] : [],
                Figures = [BoxFigures.Count.Of(owned.Count - 1)],
                Actions = [new("My box", ActionKind.Run, "box show")],
            };
        }, cancellationToken);

    // The whole name, or else a part of it that is in no other.
    private static List<OwnedGear> Meant(IReadOnlyList<OwnedGear> owned, string said)
    {
        var plain = Plain(said);
        var whole = owned.Where(thing => Plain(thing.Gear.Name) == plain).ToList();
        return whole.Count > 0 ? whole : [.. owned.Where(thing => Plain(thing.Gear.Name).Contains(plain, StringComparison.Ordinal))];
    }

    private static string WhyNot(IReadOnlyList<OwnedGear> owned, List<OwnedGear> meant, string said)
    {
        var names = (meant.Count > 0 ? meant : owned).Select(thing => thing.Gear.Name);
        return owned.Count == 0 ? "Your box is empty. /box add item:\"braid 6lb\" puts something in."
            : meant.Count > 0 ? $"{Quoting.Quote(said)} could be {string.Join(" or ", names.Distinct().Take(NearestShown))}: give the whole name."
            : $"{Quoting.Quote(said)} is not in your box. Nearest: {string.Join(", ", Nearest.To(said, names, NearestShown))}.";
    }

    private static string Plain(string name) => RecordSet.Plain(name).Replace(" ", "", StringComparison.Ordinal);
}
