namespace CrewBot.Core.Ice.Posts;

/// <summary>Reads how firmly a quantity is told: as such, about, or only as what it does not reach.</summary>
internal static class PostBounds
{
    private const int Reach = 4;
    private const int Afterthought = 16;

    /// <summary>Whether a quantity is only an upper bound: almost 4, less than 4, not 4 yet, 4 at most. Then no thickness is said.</summary>
    public static bool IsUpper(PostSentence sentence, PostClause clause, PostQuantity quantity)
    {
        if (quantity.Most > quantity.Least * 1.001)
        {
            return false;
        }

        if (sentence[quantity.End].Text is "max" or "maximum" or "tops" || sentence.Says(quantity.End, "at", "most") || sentence.Says(quantity.End, "or", "less"))
        {
            return true;
        }

        var isUpper = false;
        for (var at = quantity.Start - 1; at >= clause.Start; at--)
        {
            var token = sentence[at];
            if (token.Is(PostWord.No) && !(sentence[at + 1].Text is "sure" or "only" or "just" or "doubt" or "joke"))
            {
                return !sentence.SaysAnywhere(at, quantity.Start, "less");
            }

            if (token.Text is "under" or "below" && IsWhere(sentence, clause, at, quantity))
            {
                return false;
            }

            if ((token.Is(PostWord.Limit) && sentence[at - 1].Text is not "or") || (token.Text is "up" && sentence[at + 1].Text is "to") || (token.Text is "short" && sentence[at + 1].Text is "of"))
            {
                isUpper = true;
            }
            else if (!IsBetween(token))
            {
                break;
            }
        }

        return isUpper && !IsFloor(sentence, clause, quantity);
    }

    // Couldn't get a hole below 20 cm; nothing under 6 inches.
    private static bool IsFloor(PostSentence sentence, PostClause clause, PostQuantity quantity)
    {
        var under = quantity.Start - 1;
        var no = sentence.Find(clause.Start, under, PostWord.No);
        return sentence[under].Text is "under" or "below" && no >= 0
            && (sentence[no].Text is "nothing" or "none" || (sentence[no].Text is "couldn't" or "couldnt" or "didn't" or "didnt" && sentence[no + 1].Is(PostWord.Measure | PostWord.Have)));
    }

    /// <summary>Whether it is only about, maybe, or by eye.</summary>
    public static bool IsHedged(PostSentence sentence, PostClause clause, PostQuantity quantity)
    {
        if (quantity.IsVague || sentence.SaysAnywhere(quantity.Start, quantity.End, "maybe"))
        {
            return true;
        }

        for (var at = quantity.Start - 1; at >= clause.Start; at--)
        {
            var token = sentence[at];
            var isOfPlace = token.Is(PostWord.Preposition) && (sentence[at - 1].Text is "turn" or "turned" || !(quantity.Start - at <= 2 && !sentence.Any(at + 1, quantity.Start, PostWord.Det | PostWord.Place)));
            if (token.Is(PostWord.Hedge) && !isOfPlace && !(token.Is(PostWord.Say | PostWord.Hear) && !sentence.Any(clause.Start, at, PostWord.First | PostWord.Wish)))
            {
                return true;
            }
        }

        return sentence.SaysAnywhere(quantity.End, quantity.End + Reach, "or", "so") || sentence.SaysAnywhere(quantity.End, quantity.End + Reach, "give", "or")
            || sentence.SaysAnywhere(quantity.End, quantity.End + 2, "ish") || sentence[quantity.End].Text is "maybe" or "probably" or "roughly" or "approx"
            || sentence.SaysAnywhere(quantity.End, quantity.End + Afterthought, "i", "think") || sentence.SaysAnywhere(quantity.End, quantity.End + Afterthought, "i", "guess");
    }

    /// <summary>Whether a sentence says that nobody measured.</summary>
    public static bool IsUnmeasured(PostSentence sentence)
    {
        for (var at = 0; at < sentence.Count; at++)
        {
            if (sentence[at].Text is "eyeball" || sentence[at].Is(PostWord.No) && (sentence[at + 1].Text is "sure" or "measure" or "drill" or "check" || sentence[at + 2].Text is "measure"))
            {
                return true;
            }
        }

        return false;
    }

    // Slush under 8 inches of ice; 12 inches of slush and under 8 inches of ice; under 8 inches of ice the current rips.
    private static bool IsWhere(PostSentence sentence, PostClause clause, int under, PostQuantity quantity)
    {
        const PostWord Below = PostWord.Slush | PostWord.Water | PostWord.Current;
        var (before, isJoined) = (under - 1, sentence[under - 1].Text is "and" or "&" or "," or "then");
        before -= sentence[before].Is(PostWord.Be) ? 1 : isJoined ? 1 : 0;
        var isUnder = sentence[before].Is(Below) || (sentence[before].Text is "snow" or "crust" or "fluff" && isJoined);
        var ice = sentence.Find(quantity.End, quantity.End + 4, PostWord.Ice);
        // New ice under 2 inches of snow ice; but "ice under 4 inches" ends there.
        isUnder |= sentence[before].Is(PostWord.Ice) && sentence[quantity.End].Text is "of";
        return (isUnder && (!isJoined || sentence.Any(before - 3, before, PostWord.Unit)))
            || (under == clause.Start && ice >= 0 && sentence[ice + 1].Is(PostWord.Det | PostWord.Pronoun));
    }

    private static bool IsBetween(PostToken token) =>
        token.Is(PostWord.Hedge | PostWord.Limit | PostWord.Have | PostWord.Be | PostWord.Measure | PostWord.Det) && !token.Is(PostWord.Place)
        || token.Text is "even" or "quite" or "yet" or "more" or "over" or "than" or "full" or "of" or "there" or "to" or "at" or "still" or "any" or "thick" or "just" or "only";
}
