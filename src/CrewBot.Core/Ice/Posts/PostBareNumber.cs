namespace CrewBot.Core.Ice.Posts;

/// <summary>Tells a number that would be a thickness if a unit were said.</summary>
internal static class PostBareNumber
{
    /// <summary>Whether a number without a unit stands where a thickness would: "5 of good ice", "measured 6".</summary>
    /// <param name="sentence">Where it stands.</param>
    /// <param name="clause">Its clause.</param>
    /// <param name="number">The number.</param>
    /// <param name="followsOne">Whether a thickness stands before it in the sentence.</param>
    /// <param name="isAboutIce">Whether ice has been told of.</param>
    public static bool Is(PostSentence sentence, PostClause clause, PostQuantity number, bool followsOne, bool isAboutIce)
    {
        if (IsCount(sentence, number) || PostMeasure.IsRule(sentence, number) || PostMeasure.IsChange(sentence, clause, number))
        {
            return false;
        }

        if (IsBeforeIce(sentence, number))
        {
            return true;
        }

        // "Four to five off the reef" tells nothing else.
        var next = sentence[number.End];
        var isRange = number.Start == clause.Start && number.Most > number.Least;
        if (isRange && ((next.Is(PostWord.Strong) && !next.Is(PostWord.Extent)) || (isAboutIce && next.Is(PostWord.Preposition) && sentence.Any(number.End, clause.End, PostWord.Place))))
        {
            return true;
        }

        var endsHere = (next.Words == PostWord.None && !next.IsWord) || (next.Is(PostWord.Preposition | PostWord.Contrast | PostWord.If) && next.Text is not "of") || next.Text is "and";
        var subject = PostMeasure.SubjectOf(sentence, clause, number);
        return (endsHere || (followsOne && next.Is(PostWord.Part))) && subject != PostMeasure.Head.Other
            && (subject == PostMeasure.Head.Ice || sentence[number.Start - 1].Is(PostWord.Measure)
                || (IsPraised(sentence, number) && next.Is(PostWord.Preposition) && sentence.Any(number.End, clause.End, PostWord.Place))
                || (followsOne && (next.Is(PostWord.Preposition) || sentence.Any(number.End, clause.End, PostWord.Place) || next.Is(PostWord.Part) || sentence[number.Start - 1].Is(PostWord.Day) || sentence[number.Start - 1].Text is "then"))
                || (isAboutIce && IsHad(sentence, clause, number)));
    }

    // 5 of us, 12 bucks, 20 %, 4th, at 7
    private static bool IsCount(PostSentence sentence, PostQuantity number)
    {
        var (before, next) = (sentence[number.Start - 1], sentence[number.End]);
        var isOfPeople = next.Text is "of" && (sentence[number.End + 1].Is(PostWord.Person) || sentence[number.End + 1].Text is "us" or "them" or "you" or "my" or "our");
        return number.Most > 100 || isOfPeople || PostPlaces.IsNumbered(sentence, number.Start - 1) || sentence.IsClockAt(number.End) || sentence.IsClockAt(number.Start - 1) || next.Is(PostWord.OtherUnit | PostWord.Thing) || next.Text is "%" or "°" or "/" or "th" || before.Text is "$" or "#" or "-" or "at" or "for";
    }

    private static bool IsBeforeIce(PostSentence sentence, PostQuantity number)
    {
        var at = number.End + (sentence[number.End].Text is "of" ? 1 : 0);
        var end = at;
        while (sentence[end].Is(PostWord.Praise | PostWord.Kind) && !sentence[end].Is(PostWord.Preposition))
        {
            end++;
        }

        return sentence[end].Is(PostWord.Ice | PostWord.Thick)
            || (end > at && sentence.Any(at, end, PostWord.Kind) && !(sentence[end].IsWord && sentence[end].Words == PostWord.None));
    }

    // A solid 14 at the pier.
    private static bool IsPraised(PostSentence sentence, PostQuantity number) =>
        sentence[number.Start - 1].Is(PostWord.Praise) && sentence[number.Start - 2].Text is "a";

    // I got 6; wasn't more than 3 by the culvert.
    private static bool IsHad(PostSentence sentence, PostClause clause, PostQuantity number)
    {
        var at = number.Start - 1;
        while (at > clause.Start && (sentence[at].Is(PostWord.Hedge | PostWord.Limit) || sentence[at].Text is "more" or "than" or "over" or "only" or "just"))
        {
            at--;
        }

        return at >= clause.Start && sentence[at].Is(PostWord.Have | PostWord.Be);
    }
}
