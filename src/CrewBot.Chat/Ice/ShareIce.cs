using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>
/// Answers <c>/ice share</c>: this crew's side of an agreement to share reports with another crew; without one, whom it shares
/// with. People see names, but an agreement goes by the key: a name anybody can take.
/// </summary>
public sealed class ShareIce(IceOptions options, CrewBook book) : ICommandHandler
{
    private const int MostShown = 6;

    public CommandInfo Info { get; } = new(
        "ice share", "Owner: share ice reports with another crew, which must agree too", "/ice share crew:north-shore spot:hidden",
        [options.Crew, options.SpotShown, options.End])
    {
        Writes = true,
        Role = Role.Owner,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        request.Has(options.End) && !request.Has(options.Crew) ? Task.FromResult(Reply.Refuse("Say with whom to end it, such as /ice share crew:north-shore end:yes"))
        : request.Has(options.Crew)
        ? book.WriteOnceAsync(request, (session, _) => ShareAsync(request, session), cancellationToken)
        : book.ReadAsync(request, session => ListAsync(request, session), cancellationToken);

    private async Task<Reply> ShareAsync(Request request, CrewSession session)
    {
        var partners = new IcePartnerRepository(session);
        var before = await partners.AllAsync();
        var own = request.Caller.Crew!;
        var read = KeyOf(request.Get(options.Crew), own, before);
        if (read.Value is not { } other)
        {
            return Reply.Refuse(read.Fault!);
        }

        if (other == own)
        {
            return Reply.Refuse($"{Quoting.Quote(other)} is this crew's own key: the other crew's owner gives it as crew:{other}.");
        }

        if (request.GetOr(options.End, false))
        {
            var former = before.FirstOrDefault(partner => partner.Key == other);
            await partners.EndAsync(other);
            return new Reply
            {
                Headline = $"Nothing is shared with {former?.Name ?? $"crew {other}"} any more.",
                Lines = ["Corrections of what they were told still reach them."],
            };
        }

        await partners.AgreeAsync(other, request.GetOr(options.SpotShown, false));
        var now = (await partners.AllAsync()).Single(partner => partner.Key == other);
        return new Reply
        {
            Headline = now.HasAgreed ? $"Ice reports are shared with {NameOf(now)}." : $"Ice reports will be shared with {NameOf(now)} once its owner agrees too.",
            Lines =
            [
                now.ShowsSpot ? "They see the exact spot." : "The exact spot, notes and quotes stay hidden from them.",
                $"Their owner gives /ice share crew:{own}, and a channel of theirs follows the water by the same name.",
            ],
        };
    }

    private static async Task<Reply> ListAsync(Request request, CrewSession session)
    {
        var partners = await new IcePartnerRepository(session).AllAsync();
        var agreed = partners.Count(partner => partner.HasAgreed);
        var more = partners.Count - MostShown;
        return new Reply
        {
            Headline = agreed == 0 ? "Ice reports are shared with no other crew." : $"Ice reports are shared with {(agreed == 1 ? "one crew" : $"{agreed} crews")}.",
            Lines =
            [
                .. partners.OrderByDescending(partner => partner.HasAgreed).Take(MostShown).Select(LineOf),
                .. more > 0 ? [$"And {more} more."] : (IEnumerable<string>)[],
                $"This crew's key is {request.Caller.Crew}: another crew's owner gives /ice share crew:{request.Caller.Crew}, and you give theirs.",
            ],
        };
    }

    // A platform that numbers crews has no key that is a word: such a key would agree with nobody, for ever.
    private static Reading<string> KeyOf(string said, string own, IReadOnlyList<IcePartner> partners)
    {
        var called = partners.Where(partner => string.Equals(partner.Name, said, StringComparison.OrdinalIgnoreCase)).ToList();
        return IsNumber(said) || partners.Any(partner => partner.Key == said) ? said
            : called is [var only] ? only.Key
            : called.Count > 1 ? new Misread($"{called.Count} partner crews are called {Quoting.Quote(said)}: give the key, {string.Join(" or ", called.Select(partner => partner.Key))}.")
            : IsNumber(own) ? new Misread($"{Quoting.Quote(said)} is no partner crew's name, and a crew's key is a number such as {own}. Their owner sees theirs with /ice share.")
            : said;
    }

    private static bool IsNumber(string key) => key.All(char.IsAsciiDigit);

    private static string NameOf(IcePartner partner) => partner.Name ?? $"crew {partner.Key}";

    private static string LineOf(IcePartner partner) =>
        $"{(partner.Name is { } name ? $"{name} ({partner.Key})" : NameOf(partner))}: "
        + (!partner.HasAgreed ? "its owner has not agreed yet." : partner.ShowsSpot ? "they see the exact spot." : "the exact spot stays hidden from them.");
}
