namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds the hazards that a clause says are there. In doubt a hazard counts.</summary>
internal static class PostHazards
{
    /// <summary>The hazards of a clause, each with the token it stands at.</summary>
    public static IEnumerable<(IceHazard Hazard, int At)> In(PostSentence sentence, PostClause clause)
    {
        for (var at = clause.Start; at < clause.End; at++)
        {
            if (At(sentence, clause, at) is { } hazard && !IsDenied(sentence, clause, at, hazard) && !IsOnlyIf(sentence, clause, at))
            {
                yield return (hazard, at);
            }
        }
    }

    private static IceHazard? At(PostSentence sentence, PostClause clause, int at)
    {
        var token = sentence[at];
        return token.Is(PostWord.Slush) ? IceHazard.Slush
            : token.Is(PostWord.Crack) && IsCrack(sentence, at) ? (IsWet(sentence, clause, at) ? IceHazard.WetCrack : IceHazard.Crack)
            : token.Is(PostWord.Ridge) && !sentence[at - 1].IsCapital ? IceHazard.Ridge
            : PostBreakthroughs.At(sentence, clause, at) ?? PostOpenings.At(sentence, clause, at) ?? PostWaters.At(sentence, clause, at) ?? PostWeaknesses.At(sentence, clause, at);
    }

    private static bool IsCrack(PostSentence sentence, int at) =>
        !(sentence[at + 1].Text is "me" or "up" or "a" or "at" || (sentence[at + 1].Is(PostWord.Open) && sentence[at + 2].Is(PostWord.Det)) || sentence.Says(at + 1, "of", "dawn"));

    private static bool IsWet(PostSentence sentence, PostClause clause, int at) =>
        sentence.Any(Math.Max(clause.Start, at - 5), Math.Min(clause.End, at + 6), PostWord.Wet | PostWord.Open);

    // No slush, no slush or cracks, didn't see any, never saw, slush is gone. "Not sure about", "no doubt" and "no joke" deny nothing.
    private static bool IsDenied(PostSentence sentence, PostClause clause, int at, IceHazard hazard)
    {
        if (hazard == IceHazard.Thin || (hazard == IceHazard.OpenWater && !sentence[at].Is(PostWord.Open | PostWord.Water)) || hazard == IceHazard.WeakPlace)
        {
            return false; // these read their own "not"
        }

        var isGone = sentence[at + 1].Is(PostWord.Be) && sentence[at + 2].Text is "gone";
        for (var before = at - 1; before >= ListStart(sentence, clause, at); before--)
        {
            var token = sentence[before];
            if (token.Text is "and" or "but" && !sentence[before + 1].Is(PostWord.No))
            {
                return isGone;
            }

            if (token.Text is "free" && sentence[before + 1].Text is "of")
            {
                return true;
            }

            if (token.Is(PostWord.No) && !(sentence[before + 1].Text is "sure" or "doubt" or "joke" or "kidding" or "lie" or "only" or "just" or "believe" or "bad"))
            {
                return isGone || token.Text is "no" or "without" or "zero" or "neither" or "nor"
                    || before == at - 1
                    || (hazard == IceHazard.BrokeThrough && at - before <= 2)
                    || sentence.Any(before + 1, at, PostWord.Measure | PostWord.Have | PostWord.Be | PostWord.Adverb)
                    || sentence.SaysAnywhere(before + 1, at, "any") || sentence.SaysAnywhere(before + 1, at, "notice") || sentence.SaysAnywhere(before + 1, at, "much");
            }
        }

        return isGone;
    }

    // "No slush, cracks or open water" denies the whole list, "no slush, open water by the narrows" only its first.
    private static int ListStart(PostSentence sentence, PostClause clause, int at)
    {
        var isListed = sentence.SaysAnywhere(clause.Start, clause.End, "or") && sentence[clause.Start - 1].Text is ",";
        if (!isListed || at > clause.Start + 3)
        {
            return clause.Start;
        }

        var start = clause.Start - 1;
        while (start > 0 && sentence[start - 1].Text is not ("," or ";"))
        {
            start--;
        }

        return start;
    }

    // If there is open water we stay home; hope nobody falls in; slush tomorrow.
    private static bool IsOnlyIf(PostSentence sentence, PostClause clause, int at) =>
        (sentence[clause.Start].Is(PostWord.If) && sentence[clause.Start].Text is not ("when" or "once" or "before"))
        || sentence.Any(clause.Start, at, PostWord.Future)
        || (sentence.Find(clause.Start, at, PostWord.Wish) is var wish and >= 0 && sentence[wish].Text is "hope" or "hopefully" or "hoping" or "wish" or "imagine" or "should" && sentence[wish].Text.Length > 0)
        || (PostSense.IsComing(sentence, at, clause.End) && !sentence[at].Is(PostWord.Avoid)); // "stay off until next week" is of today
}
