namespace CrewBot.Core.Ice.Posts;

/// <summary>Reads what ice a quantity is called.</summary>
internal static class PostKinds
{
    private static readonly (PostWord Word, IceKind Kind)[] Kinds =
    [
        (PostWord.Layered, IceKind.Layered),
        (PostWord.Slush, IceKind.Slushy),
        (PostWord.Candled, IceKind.Candled),
        (PostWord.Refrozen, IceKind.Refrozen),
        (PostWord.Grey, IceKind.Grey),
        (PostWord.White, IceKind.White),
        (PostWord.Clear, IceKind.Clear),
    ];

    /// <summary>The kind that stands beside a quantity: 5 inches of nice clear black ice, clear ice 5 inches.</summary>
    /// <param name="sentence">Where it stands.</param>
    /// <param name="clause">Its clause.</param>
    /// <param name="quantity">The quantity.</param>
    /// <param name="isAlone">Whether it is its clause's only one, so that a kind before it is its own.</param>
    public static IceKind Of(PostSentence sentence, PostClause clause, PostQuantity quantity, bool isAlone)
    {
        var end = quantity.End + (sentence[quantity.End].Is(PostWord.Be) ? 1 : 0);
        while (end < clause.End && IsNamed(sentence[end]) && sentence[end].Text is not ("with" or "slush" or "water"))
        {
            end++;
        }

        if (sentence[end].Text is "slush" && sentence[end + 1].Is(PostWord.Ice))
        {
            return IceKind.Slushy;
        }

        var after = In(sentence, quantity.End, end);
        return after != IceKind.Unknown || !isAlone || sentence.Any(quantity.End, end, PostWord.Kind) ? after : Before(sentence, clause, quantity);
    }

    /// <summary>The kind of a clause that says no thickness, for the thickness before it: all clear, but it's honeycombed.</summary>
    public static IceKind OfRemark(PostSentence sentence, PostClause clause)
    {
        if (sentence.Any(clause.Start, clause.End, PostWord.No))
        {
            return IceKind.Unknown;
        }

        var kind = In(sentence, clause.Start, clause.End);
        var isBare = Enumerable.Range(clause.Start, clause.End - clause.Start)
            .All(at => sentence[at].Is(PostWord.Kind | PostWord.Praise | PostWord.Ice | PostWord.Be | PostWord.Adverb) || sentence[at].Text is "and" or "it" or "stuff");
        return kind is IceKind.Clear or IceKind.White && !isBare ? IceKind.Unknown
            : kind is IceKind.Slushy && !sentence.Any(clause.Start, clause.End, PostWord.Ice) ? IceKind.Unknown
            : kind;
    }

    /// <summary>The kind from one place to another: a weak one if there is any, none when two are mixed.</summary>
    public static IceKind In(PostSentence sentence, int from, int to)
    {
        var found = IceKind.Unknown;
        foreach (var (word, kind) in Kinds)
        {
            var at = sentence.Find(from, to, word);
            if (at < 0 || IsOtherwise(sentence, at))
            {
                continue;
            }

            if (kind is not (IceKind.Clear or IceKind.White))
            {
                return kind;
            }

            if (found != IceKind.Unknown || IsPartly(sentence, at))
            {
                return IceKind.Unknown;
            }

            found = kind;
        }

        return found;
    }

    private static IceKind Before(PostSentence sentence, PostClause clause, PostQuantity quantity)
    {
        var at = sentence.Find(clause.Start, quantity.Start, PostWord.Kind);
        return at >= 0 && (sentence.Any(at, quantity.Start, PostWord.Ice) || sentence[at - 1].Is(PostWord.Be)) && !sentence.Any(at - 2, at, PostWord.No)
            ? In(sentence, at, quantity.Start)
            : IceKind.Unknown;
    }

    private static bool IsNamed(PostToken token) =>
        token.Is(PostWord.Kind | PostWord.Praise | PostWord.Ice | PostWord.Thick | PostWord.Hedge) && !token.Is(PostWord.Strong)
        || token.Text is "of" or "and" or "&" or "/" or "+" or "some" or "part" or "half" or "partly" or "very" or "the" or "total" or "it" or "that";

    // Mostly clear is not clear.
    private static bool IsPartly(PostSentence sentence, int at) =>
        sentence.Any(at - 2, at, PostWord.Hedge) || sentence[at - 1].Text is "mostly" or "pretty" or "partly" or "some" or "half" or "part" or "almost" or "nearly" or "semi";

    // Clear of snow, stay clear.
    private static bool IsOtherwise(PostSentence sentence, int at) =>
        sentence[at].Text is "clear" && (sentence[at + 1].Text is "of" or "sky" or "skies" || sentence[at - 1].Is(PostWord.Avoid));
}
