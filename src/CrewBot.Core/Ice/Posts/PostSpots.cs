namespace CrewBot.Core.Ice.Posts;

/// <summary>Says which place of a sentence belongs to what is told in it.</summary>
/// <param name="sentence">The sentence.</param>
/// <param name="clauses">Its clauses.</param>
/// <param name="places">Its places.</param>
/// <param name="told">Where its thicknesses and hazards stand.</param>
internal sealed class PostSpots(PostSentence sentence, IReadOnlyList<PostClause> clauses, IReadOnlyList<PostPlace> places, IReadOnlyList<int> told)
{
    private const PostWord Verbs = PostWord.First | PostWord.Have | PostWord.Measure | PostWord.Catch | PostWord.Contrast | PostWord.Unreal | PostWord.Fall;

    /// <summary>The place of what stands from one token to another in a clause; null when the sentence names none for it.</summary>
    /// <param name="start">Its first token.</param>
    /// <param name="end">After its last token.</param>
    /// <param name="clause">The number of its clause.</param>
    /// <param name="isLayer">Whether it belongs to what was told before it: a layer, something on top.</param>
    public string? Of(int start, int end, int clause, bool isLayer) =>
        Own(start, end, clauses[clause]) ?? Following(clause, isLayer) ?? Preceding(clause, isLayer);

    private string? Own(int start, int end, PostClause clause)
    {
        PostPlace? before = null;
        PostPlace? after = null;
        foreach (var place in places.Where(place => clause.Has(place.Start)))
        {
            if (place.End <= start)
            {
                before = place;
            }
            else if (place.Start >= end)
            {
                after ??= place;
            }
            else
            {
                after ??= place;
            }
        }

        if (before is null || after is null)
        {
            return (before ?? after)?.Name;
        }

        // "At the landing 5 inches at the narrows 3 inches": each has its place before it.
        var isLed = told.Where(clause.Has).DefaultIfEmpty(int.MaxValue).Min() > places.First(place => clause.Has(place.Start)).Start;
        return isLed && told.Any(at => clause.Has(at) && at >= after.Value.End) ? before.Value.Name : after.Value.Name;
    }

    // 5 inches, mostly white, by the narrows
    private string? Following(int clause, bool isLayer)
    {
        for (var next = clause + 1; next < clauses.Count; next++)
        {
            var (isTold, place) = (told.Any(clauses[next].Has), In(clauses[next]));
            if (place is { } found)
            {
                return (isLayer || !isTold) && !sentence.Any(clauses[next].Start, found.Start, Verbs) && !sentence.Any(clauses[next].Start, clauses[next].End, PostWord.Limit | PostWord.Change) ? found.Name : null;
            }

            if (!isTold && sentence.Any(clauses[next].Start, clauses[next].End, PostWord.First))
            {
                return null;
            }
        }

        return null;
    }

    // Landing: 3 inches, slush on top
    private string? Preceding(int clause, bool isLayer)
    {
        for (var before = clause - 1; before >= 0; before--)
        {
            if (In(clauses[before]) is not { } first)
            {
                continue;
            }

            var isHeading = !told.Any(clauses[before].Has) || told.Where(clauses[before].Has).Min() > first.Start;
            return isHeading || isLayer ? places.Last(place => clauses[before].Has(place.Start)).Name : null;
        }

        return null;
    }

    private PostPlace? In(PostClause clause)
    {
        foreach (var place in places)
        {
            if (clause.Has(place.Start))
            {
                return place;
            }
        }

        return null;
    }
}
