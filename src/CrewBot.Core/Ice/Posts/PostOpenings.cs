namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds water without ice.</summary>
internal static class PostOpenings
{
    public static IceHazard? At(PostSentence sentence, PostClause clause, int at) =>
        IsOpen(sentence, clause, at) || IsNoIce(sentence, clause, at) || IsUnfrozen(sentence, clause, at) ? IceHazard.OpenWater : null;

    private static bool IsOpen(PostSentence sentence, PostClause clause, int at)
    {
        var (token, next) = (sentence[at], sentence[at + 1]);
        if (token.Text is "unfrozen" || IsGap(sentence, at))
        {
            return true;
        }

        if (!token.Is(PostWord.Open) || sentence.Any(clause.Start, at, PostWord.Crack))
        {
            return false;
        }

        if (next.Is(PostWord.Water) || next.Text is "hole" or "lead" or "spot" or "pocket" or "patch" or "area" or "channel" or "pool" or "stretch")
        {
            return true;
        }

        var isShop = sentence.Any(clause.Start, clause.End, PostWord.Ad)
            || Enumerable.Range(clause.Start, at - clause.Start).Any(word => sentence[word].Text is "landing" or "access" or "ramp" or "launch" or "gate" or "store" or "station" or "resort" or "lodge" or "road" or "bar" or "bait" or "park" or "season" or "marina" && !sentence[word - 1].Is(PostWord.Preposition) && !sentence[word - 2].Is(PostWord.Preposition));
        var isPredicate = sentence[at - 1].Is(PostWord.Be | PostWord.Adverb | PostWord.Water) || sentence[at - 1].Text is "wide" or "all" or "stay" or "mostly" or "partly" or "totally" or "completely" or "half" || next.Text is "up" || at == clause.Start || (sentence[at - 1].Is(PostWord.Place) && !next.IsWord);
        var isOfWater = sentence.Any(clause.Start, at, PostWord.Place | PostWord.Ice | PostWord.Water | PostWord.Pronoun) || sentence[at - 1].Text is "wide" || next.Is(PostWord.Strong)
            || (at == clause.Start && next.Is(PostWord.Preposition));
        return isPredicate && isOfWater && !isShop && !(next.IsWord && next.Is(PostWord.Det));
    }

    // A gap of water, an opening by the point, ice that has pulled away from the shore.
    private static bool IsGap(PostSentence sentence, int at) => sentence[at].Text switch
    {
        "gap" => sentence.Any(at + 1, at + 3, PostWord.Water) || sentence[at + 1].Text is "between" or "at" or "along" or "in",
        "opening" or "openings" => sentence[at - 1].Is(PostWord.Det | PostWord.PlaceAdj) && (!sentence[at + 1].IsWord || sentence[at + 1].Is(PostWord.Preposition)),
        "away" => sentence[at + 1].Text is "from" && sentence.Any(at - 3, at, PostWord.Ice) && sentence[at - 1].Text is "pull" or "pulled" or "drift" or "drifted" or "moved" or "broke",
        _ => false,
    };

    // No ice yet; ice free; the ice is out, went out.
    private static bool IsNoIce(PostSentence sentence, PostClause clause, int at)
    {
        if (!sentence[at].Is(PostWord.Ice))
        {
            return false;
        }

        if (sentence[at + 1].Text is "free" || (sentence[at + 1].Is(PostWord.Be) || sentence[at + 1].Text is "went") && sentence[at + 2].Text is "out" or "gone" && sentence[at + 3].Text is not ("there" or "from"))
        {
            return true;
        }

        var first = at;
        while (sentence[first - 1].Is(PostWord.Praise) && !sentence[first - 1].Is(PostWord.Safe))
        {
            if (sentence[first - 1].Text is "new" or "fresh" or "young")
            {
                return false; // none was made, which says nothing of what is there
            }

            first--;
        }

        var next = sentence[at + 1];
        return sentence[first - 1].Text is "no" or "without" or "zero"
            && (!next.IsWord || next.Is(PostWord.Preposition | PostWord.Adverb | PostWord.Contrast | PostWord.Part))
            && !sentence.Any(at, clause.End, PostWord.Thing | PostWord.Home);
    }

    // Hasn't frozen, not locked up, never froze, yet to freeze.
    private static bool IsUnfrozen(PostSentence sentence, PostClause clause, int at)
    {
        if (!sentence[at].Is(PostWord.Frozen))
        {
            return false;
        }

        var no = sentence.Find(Math.Max(clause.Start, at - 3), at, PostWord.No);
        return no >= 0 && !sentence.Any(no, at, PostWord.First) || sentence.Says(at - 2, "yet", "to");
    }
}
