using CrewBot.Chat.Commands;
using CrewBot.Chat.Photos;
using CrewBot.Chat.Trips;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.People;

namespace CrewBot.Chat.Privacy;

/// <summary>Answers <c>/crew privacy</c>: what is held on whoever asks, all of it as a file, and its end.</summary>
public sealed class HandlePrivacy(CrewBook book, IPhotoCopies copies, TripDesk trips) : ICommandHandler
{
    private static readonly CommandOption<PrivacyWish> Wish = CommandOption.Optional(
        "do", "Show what is held on you, give it as a file, or erase it",
        new ChoiceReader<PrivacyWish>([("show", PrivacyWish.Show), ("export", PrivacyWish.Export), ("erase", PrivacyWish.Erase)]));

    private static readonly CommandOption<bool> Confirm = CommandOption.Optional(
        "confirm", "Erase it for good", new ChoiceReader<bool>([("yes", true)]));

    private static readonly string Erased = ReplyJson.Write(new Reply
    {
        Headline = "That was done before; its answer went when somebody was erased",
    });

    public CommandInfo Info { get; } = new(
        "crew privacy", "What this crew's log holds on you: show it, take it with you, erase it", "/crew privacy do:show", [Wish, Confirm])
    {
        AlsoSaid = ["delete me", "delete my data", "erase me", "erase my data", "forget me", "my data"],
        FromAnywhere = true,
        Writes = true,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var wish = request.GetOr(Wish, PrivacyWish.Show);
        if (await book.ReadAsync(request, session => HeldAsync(request, session), cancellationToken) is not { } held)
        {
            return Reply.Refuse("Nothing is held on you in this crew.");
        }

        return wish switch
        {
            PrivacyWish.Export => PrivacyAnswer.File(held, request),
            PrivacyWish.Erase when request.Has(Confirm) => await EraseAsync(request, cancellationToken),
            PrivacyWish.Erase => PrivacyAnswer.Asked(held),
            _ => PrivacyAnswer.Shown(held, request),
        };
    }

    private static async Task<IReadOnlyList<HeldRows>?> HeldAsync(Request request, CrewSession session) =>
        await new MemberRepository(session).FindAsync(request.Caller.Member) is { } member
            ? await new HeldRepository(session).AllAsync(member.Id)
            : null;

    // Copies of photos go first: while the database still names them, whoever is asked again can find the rest.
    private async Task<Reply> EraseAsync(Request request, CancellationToken cancellationToken)
    {
        var photos = await book.ReadAsync(request, session => PhotosAsync(request, session), cancellationToken);
        int gone;
        try
        {
            gone = copies.Delete(request.Caller.Crew!, photos);
        }
        catch (IOException)
        {
            return Reply.Refuse("Copies of your photos can't be deleted here, so nothing else was erased: tell whoever runs CrewBot, then send it again.");
        }

        return await book.WriteOnceAsync(request, (session, member) => EraseAsync(request, session, member, gone), cancellationToken);
    }

    // Whoever presses twice may be erased by the first press while the second is read.
    private static async Task<IReadOnlyList<string>> PhotosAsync(Request request, CrewSession session) =>
        await new MemberRepository(session).FindAsync(request.Caller.Member) is { } member
            ? await new CatchRepository(session).PhotoHashesOfAsync(member.Id)
            : [];

    private async Task<Reply> EraseAsync(Request request, CrewSession session, CrewMember member, int copiesGone)
    {
        var repository = new HeldRepository(session);
        var held = await repository.AllAsync(member.Id);
        var names = await new MemberRepository(session).NamesOfAsync(member.Id);
        await repository.EraseAsync(member.Id, Erased);
        foreach (var name in names)
        {
            await repository.ForgetMentionsAsync(NamingPosts.AsWritten(name), Erased);
            await repository.ForgetQuotesAsync(name);
        }

        var posts = await NamingPosts.RewordAsync(session, names, request.At);
        await trips.ForgetAsync(request, session, member.Id);
        return PrivacyAnswer.Gone(held, posts, copiesGone);
    }
}
