namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds running water under the ice and water on top of it.</summary>
internal static class PostWaters
{
    public static IceHazard? At(PostSentence sentence, PostClause clause, int at)
    {
        var (token, next) = (sentence[at], sentence[at + 1]);

        // "Current" before a noun is an adjective: current conditions.
        if (token.Is(PostWord.Current) && token.Raw.Length is 7 or 8 && !next.Is(PostWord.Ice | PostWord.Thick) && (!next.IsWord || next.Words != PostWord.None) && !next.Is(PostWord.Praise | PostWord.Season | PostWord.Say | PostWord.Place))
        {
            return IceHazard.Current;
        }

        if (token.Is(PostWord.Water) && (sentence[at - 1].Is(PostWord.Moving) || sentence[at - 1].Text is "fast" || next.Is(PostWord.Moving) || (next.Is(PostWord.Be) && sentence[at + 2].Is(PostWord.Moving))) && !sentence.Any(clause.Start, clause.End, PostWord.Crack))
        {
            return IceHazard.Current;
        }

        var isCrack = sentence.Any(clause.Start, clause.End, PostWord.Crack);
        return (token.Is(PostWord.Overflow) && !isCrack && next.Text is not "plain")
            || (token.Is(PostWord.Water) && (IsOnTop(sentence, at) || (!isCrack && IsComingUp(sentence, at))))
            ? IceHazard.Overflow : null;
    }

    private static bool IsOnTop(PostSentence sentence, int at) =>
        sentence[at - 1].Text is "standing" or "surface"
        || sentence.Says(at + 1, "on", "top") || (sentence[at + 1].Text is "over" && sentence[at + 2].Is(PostWord.Det)) || sentence.Says(at + 1, "over", "ice")
        || (sentence[at + 1].Text is "on" && sentence.Any(at + 2, at + 4, PostWord.Ice));

    // Water coming up around the shack, pushing up through the hole.
    private static bool IsComingUp(PostSentence sentence, int at)
    {
        if (sentence.Any(at + 1, at + 6, PostWord.Through) && sentence.SaysAnywhere(at + 1, at + 9, "hole"))
        {
            return true;
        }

        for (var up = at + 2; up < at + 5; up++)
        {
            if (sentence[up].Text is "up" && sentence[up - 1].Text is "coming" or "came" or "come" or "pushing" or "pushed" or "welling" or "seep" or "bubbling")
            {
                return true;
            }
        }

        return false;
    }
}
