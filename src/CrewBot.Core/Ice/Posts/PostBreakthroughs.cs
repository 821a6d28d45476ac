namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds that somebody or something broke through.</summary>
internal static class PostBreakthroughs
{
    public static IceHazard? At(PostSentence sentence, PostClause clause, int at)
    {
        var token = sentence[at];
        if (PostDuckings.Is(sentence, clause, at) || IsThroughTheIce(sentence, clause, at) || IsGivenWay(sentence, clause, at))
        {
            return IceHazard.BrokeThrough;
        }

        // Somebody could fall in; nobody has.
        if (!token.Is(PostWord.Fall) || sentence[at - 1].Text is "could" or "might" or "may" or "can" or "would" or "will" or "should" or "to" or "gonna" or "you'll")
        {
            return null;
        }

        if (token.Text is "went" or "gave" && sentence.SaysAnywhere(at, at + 5, "out", "from", "under"))
        {
            return IceHazard.BrokeThrough;
        }

        for (var through = at + 1; through <= at + 4 && through < clause.End; through++)
        {
            if (sentence[through].Is(PostWord.Through))
            {
                return Through(sentence, clause, at, through);
            }

            if (token.Text is "fall" or "fell" or "fallen" && sentence[through].Text is "in" or "into" && !sentence[through + 1].Text.StartsWith("lov", StringComparison.Ordinal)
                && sentence[through + 1].Text is not ("behind" or "half" or "place"))
            {
                return IceHazard.BrokeThrough;
            }
        }

        return token.Text is "go" or "goes" or "going" or "went" or "gone" && IsInto(sentence, clause, at) ? IceHazard.BrokeThrough : null;
    }

    // He went in, my leg went in by the springs, the sled went in the drink; but "we went in at the landing" is where they started.
    private static bool IsInto(PostSentence sentence, PostClause clause, int at)
    {
        var into = at + 1;
        while (sentence[into].Is(PostWord.Adverb) || sentence[into].Text is "right" or "straight" or "down" or "head")
        {
            into++;
        }

        if (!clause.Has(into) || sentence[into].Text is not ("in" or "into"))
        {
            return false;
        }

        if (PostDuckings.IsWaterAt(sentence, into + 1))
        {
            return true;
        }

        var next = sentence[into + 1];
        var who = sentence[at - 1].Is(PostWord.Adverb) ? sentence[at - 2] : sentence[at - 1];
        var endsHere = !clause.Has(into + 1) || next.Is(PostWord.Strong | PostWord.Part | PostWord.Day | PostWord.Contrast | PostWord.Adverb) || next.Text is "at" or "and" or "last" or "up";
        return endsHere && next.Number is null && (who.Text is "almost" or "nearly" || (PostDuckings.IsBody(who) && who.Text is not ("we" or "it" or "there"))) && !IsStart(sentence, into, clause.End) && !sentence.Any(at - 3, at, PostWord.Have);
    }

    private static bool IsStart(PostSentence sentence, int from, int to) =>
        Enumerable.Range(from, to - from).Any(at => sentence[at].Text is "landing" or "access" or "ramp" or "launch" or "public" or "lot");

    // A sled through the ice, whatever the verb.
    private static bool IsThroughTheIce(PostSentence sentence, PostClause clause, int at) =>
        sentence[at].Is(PostWord.Through) && sentence.Any(at + 1, at + 3, PostWord.Ice) && sentence.Any(clause.Start, at, PostWord.Vehicle)
        && !sentence.Any(clause.Start, at, PostWord.Measure | PostWord.No);

    // The ice let go, gave way or broke under us.
    private static bool IsGivenWay(PostSentence sentence, PostClause clause, int at) =>
        sentence[at].Text is "under" && PostDuckings.IsBody(sentence[at + 1].Is(PostWord.Det | PostWord.No) ? sentence[at + 2] : sentence[at + 1])
        && sentence.Any(clause.Start, at, PostWord.Ice)
        && (sentence.SaysAnywhere(clause.Start, at, "let", "go") || sentence.SaysAnywhere(clause.Start, at, "gave", "way") || sentence.SaysAnywhere(clause.Start, at, "gave", "out")
            || sentence[at - 1].Text is "broke" or "collapsed" or "caved" or "collapse" or "cave");

    // Through the ice or just through; minnows and reports are gone through as well, and augers go through on purpose.
    private static IceHazard? Through(PostSentence sentence, PostClause clause, int at, int through)
    {
        if (sentence.SaysAnywhere(clause.Start, at, "spud") || sentence.SaysAnywhere(clause.Start, at, "bar") || sentence.SaysAnywhere(clause.Start, at, "chisel"))
        {
            return IceHazard.Thin;
        }

        if (sentence.SaysAnywhere(clause.Start, at, "auger") || sentence.SaysAnywhere(clause.Start, at, "drill") || sentence.SaysAnywhere(clause.Start, at, "bit"))
        {
            return null;
        }

        var next = sentence[through + 1];
        var goesOn = next.Is(PostWord.Det) ? sentence[through + 2] : next;
        var isOfIce = !goesOn.IsWord && goesOn.Number is null
            || goesOn.Is(PostWord.Ice | PostWord.Preposition | PostWord.Contrast | PostWord.Adverb | PostWord.Part | PostWord.Day | PostWord.Thin | PostWord.Slush | PostWord.Kind | PostWord.Pronoun | PostWord.If)
            || goesOn.Text is "and" or "last" or "skim" or "crust";
        return isOfIce || (next.Number is null && sentence.Any(through, through + 6, PostWord.Ice) && token(sentence, at)) ? IceHazard.BrokeThrough : null;

        static bool token(PostSentence sentence, int at) => sentence[at].Text is not ("go" or "going" or "went" or "punch" or "put");
    }
}
