namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds that somebody or something broke through.</summary>
internal static class PostBreakthroughs
{
    public static IceHazard? At(PostSentence sentence, PostClause clause, int at)
    {
        var token = sentence[at];
        if (token.Is(PostWord.Vehicle) && IsInWater(sentence, clause, at + 1))
        {
            return IceHazard.BrokeThrough;
        }

        if (token.Text is "swimming" or "swim" or "bath" or "dip" or "plunge" && sentence.Any(at - 3, at, PostWord.Fall | PostWord.Have) | sentence[at - 2].Text is "took" | sentence[at - 1].Text is "went")
        {
            return sentence[at + 1].Text is "jig" ? null : IceHazard.BrokeThrough;
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

        return token.Text is "go" or "goes" or "went" or "gone" && IsInWater(sentence, clause, at + 1) ? IceHazard.BrokeThrough : null;
    }

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

    private static bool IsInWater(PostSentence sentence, PostClause clause, int from)
    {
        for (var at = from; at < Math.Min(from + 4, clause.End); at++)
        {
            if (sentence[at].Text is "in" or "into" && sentence[at + 1].Is(PostWord.Det)
                && (sentence[at + 2].Is(PostWord.Water) || sentence[at + 2].Text is "lake" or "drink" or "river" or "pond" or "hole"))
            {
                return true;
            }
        }

        return false;
    }
}
