namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds ice that is called thin, weak or not to be trusted, and places that are warned of.</summary>
internal static class PostWeaknesses
{
    public static IceHazard? At(PostSentence sentence, PostClause clause, int at)
    {
        var (token, next) = (sentence[at], sentence[at + 1]);
        if (token.Is(PostWord.Avoid) && (token.Text is "avoid" || sentence.Any(at + 1, at + 4, PostWord.Strong) || next.Text is "away" or "clear" or "out" or "off"))
        {
            return sentence[at + 1].Text is "safe" or "warm" || sentence.Any(at, clause.End, PostWord.Slush | PostWord.Crack | PostWord.Ridge | PostWord.Open) ? null
                : IsAtPlace(sentence, at, clause.End) ? IceHazard.WeakPlace
                : token.Text is "avoid" ? null
                : IceHazard.Thin;
        }

        if (token.Is(PostWord.Unit) && sentence[at - 1].Text is "few" or "couple" && sentence.Any(at - 4, at, PostWord.Adverb))
        {
            return IceHazard.Thin; // only a few inches
        }

        if (token.Is(PostWord.Thin) || IsWeakKind(sentence, clause, at))
        {
            return IsOfOther(sentence, at) || IsDenied(sentence, clause, at) ? null : IceHazard.Thin;
        }

        if (token.Is(PostWord.Poor) && sentence.Any(clause.Start, clause.End, PostWord.Ice) && !IsOfOther(sentence, at))
        {
            return IsDenied(sentence, clause, at) ? null : IceHazard.Thin;
        }

        // I would not walk on it
        if (token.Text is "walk" or "step" or "go" && sentence[at + 1].Text is "on" or "out" or "past" or "beyond"
            && sentence.Any(at - 2, at, PostWord.No) && sentence.SaysAnywhere(at - 2, at, "wouldn't") | sentence.SaysAnywhere(at - 2, at, "wouldnt") | sentence.SaysAnywhere(at - 2, at, "would", "not"))
        {
            return IceHazard.Thin;
        }

        return token.Is(PostWord.Safe) && IsDenied(sentence, clause, at) && IsOfIce(sentence, clause, at) ? IceHazard.Thin : null;
    }

    private static bool IsAtPlace(PostSentence sentence, int from, int to) => sentence.Any(from, to, PostWord.Place) || Enumerable.Range(from + 1, Math.Max(0, to - from - 1)).Any(at => sentence[at].IsCapital);

    // Grey or rotten ice without a thickness is still a warning.
    private static bool IsWeakKind(PostSentence sentence, PostClause clause, int at) =>
        sentence[at].Is(PostWord.WeakKind & ~PostWord.Slush)
        && ((sentence[at].Text is "honeycomb" or "honeycombed" or "candled" && !sentence.Any(0, at, PostWord.Unit)) || sentence.Any(at + 1, at + 4, PostWord.Ice) || (sentence[at - 1].Is(PostWord.Be) && sentence.Any(clause.Start, at, PostWord.Ice)))
        && !Enumerable.Range(clause.Start, clause.End - clause.Start).Any(word => sentence[word].Is(PostWord.Unit))
        || (sentence[at].Is(PostWord.Candled) && sentence[at - 1].Is(PostWord.Be) && sentence[at - 2].Is(PostWord.Place)); // the edge is rotten

    // A thin line, a thin layer of snow, a sketchy guy.
    private static bool IsOfOther(PostSentence sentence, int at) =>
        sentence[at + 1].Is(PostWord.Thing | PostWord.Person) || sentence[at + 1].Text is "layer" or "coat" or "coating" or "film" or "blooded" or "spot" && !sentence.Any(at, at + 5, PostWord.Ice);

    private static bool IsDenied(PostSentence sentence, PostClause clause, int at)
    {
        var no = sentence.Find(Math.Max(clause.Start, at - 5), at, PostWord.No);
        return no >= 0 && sentence[no + 1].Text is not ("sure" or "only" or "just" or "doubt" or "joke" or "kidding") && sentence[no].Text is not "nothing"
            && !(sentence[at].Text is "safe" && (sentence[no].Text is "never" || sentence[no + 1].Is(PostWord.Ice)));
    }

    // Not safe, no good ice, I wouldn't trust it past the island; but not "not a great day".
    private static bool IsOfIce(PostSentence sentence, PostClause clause, int at) =>
        sentence[at].Text is "safe" or "trust" or "walkable" or "fishable" or "hold"
            ? !sentence.Any(at + 1, at + 3, PostWord.Thing)
            : sentence.Any(at + 1, at + 3, PostWord.Ice | PostWord.Thick) || (sentence.Any(clause.Start, at, PostWord.Ice) && sentence.Any(clause.Start, at, PostWord.Be | PostWord.No));
}
