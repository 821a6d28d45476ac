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
        AlsoSaid = ["box delete", "box undo"],
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

    // The whole name, or else a part of it that is in no other, or else its words in another order: "6lb braid".
    private static List<OwnedGear> Meant(IReadOnlyList<OwnedGear> owned, string said)
    {
        var (plain, words) = (Plain(said), RecordSet.Plain(said).Split(' '));
        Func<string, bool>[] fits =
            [name => name == plain, name => name.Contains(plain, StringComparison.Ordinal), name => words.All(word => name.Contains(word, StringComparison.Ordinal))];
        return fits.Select(fit => owned.Where(thing => fit(Plain(thing.Gear.Name))).ToList()).FirstOrDefault(meant => meant.Count > 0) ?? [];
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
