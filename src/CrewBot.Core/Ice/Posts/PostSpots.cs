namespace CrewBot.Core.Ice.Posts;

/// <summary>Says which place of a sentence belongs to what is told in it.</summary>
internal sealed class PostSpots
{
    // A place further off belongs to something else.
    private const int Reach = 12;

    private const PostWord Verbs = PostWord.First | PostWord.Have | PostWord.Measure | PostWord.Catch | PostWord.Contrast | PostWord.Unreal | PostWord.Fall;

    private readonly PostSentence _sentence;
    private readonly IReadOnlyList<PostClause> _clauses;
    private readonly List<PostPlace>[] _places;
    private readonly List<int>[] _told;

    /// <param name="sentence">The sentence.</param>
    /// <param name="clauses">Its clauses.</param>
    /// <param name="places">Its places, in order.</param>
    /// <param name="told">Where its thicknesses and hazards stand, in order.</param>
    public PostSpots(PostSentence sentence, IReadOnlyList<PostClause> clauses, IReadOnlyList<PostPlace> places, IReadOnlyList<int> told)
    {
        (_sentence, _clauses) = (sentence, clauses);
        _places = ByClause(places, place => place.Start);
        _told = ByClause(told, at => at);
    }

    /// <summary>The place of what stands from one token to another in a clause; null when the sentence names none for it.</summary>
    /// <param name="start">Its first token.</param>
    /// <param name="end">After its last token.</param>
    /// <param name="clause">The number of its clause.</param>
    /// <param name="isLayer">Whether it belongs to what was told before it: a layer, something on top.</param>
    public string? Of(int start, int end, int clause, bool isLayer) =>
        Own(start, end, clause) ?? Heading(clause) ?? Following(clause, isLayer) ?? Preceding(clause, isLayer);

    // Bay: 12 cm / point: 9 cm
    private string? Heading(int clause) =>
        clause > 0 && Heads(clause - 1) && _told[clause - 1].Count == 0 && _places[clause - 1] is [.., var last] ? last.Name : null;

    private bool Heads(int clause) => _sentence[_clauses[clause].End].Text is ":";

    private string? Own(int start, int end, int clause)
    {
        PostPlace? before = null;
        PostPlace? after = null;
        foreach (var place in _places[clause])
        {
            if (place.End <= start)
            {
                before = place;
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
        var isLed = _told[clause] is [var first, ..] && first > _places[clause][0].Start;
        return isLed && _told[clause][^1] >= after.Value.End ? before.Value.Name : after.Value.Name;
    }

    // 5 inches, mostly white, by the narrows
    private string? Following(int clause, bool isLayer)
    {
        for (var next = clause + 1; next < Math.Min(_clauses.Count, clause + Reach); next++)
        {
            var (from, to) = (_clauses[next].Start, _clauses[next].End);
            if (_sentence[from].Text is "only" or "except" || (Heads(next) && _places[next].Count > 0))
            {
                return null;
            }

            var isTold = _told[next].Count > 0;
            if (_places[next] is [var found, ..])
            {
                from += isLayer && _sentence[from].Text is "then" ? 1 : 0;
                return (isLayer || !isTold) && (IsRelative(clause, next) || !_sentence.Any(from, found.Start, Verbs)) && !_sentence.Any(from, to, PostWord.Limit | PostWord.Change) ? found.Name : null;
            }

            if (!isTold && _sentence.Any(from, to, PostWord.First) && !_sentence.SaysAnywhere(from, to, "hole"))
            {
                return null;
            }
        }

        return null;
    }

    // The 7 inches we found at the pier.
    private bool IsRelative(int clause, int next) =>
        next == clause + 1 && _clauses[next].Start == _clauses[clause].End && _told[next].Count == 0
        && _sentence[_clauses[next].Start].Is(PostWord.First) && _sentence[_clauses[next].Start + 1].Is(PostWord.Measure | PostWord.Have);

    // Landing: 3 inches, slush on top
    private string? Preceding(int clause, bool isLayer)
    {
        for (var before = clause - 1; before >= Math.Max(0, clause - Reach); before--)
        {
            if (_places[before] is [var first, ..])
            {
                var isHeading = _told[before] is not [var told, ..] || told > first.Start;
                return isHeading || isLayer || _sentence[_clauses[clause].Start].Text is "was" or "is" ? _places[before][^1].Name : null;
            }
        }

        return null;
    }

    // What stands between two clauses belongs to none.
    private List<T>[] ByClause<T>(IReadOnlyList<T> all, Func<T, int> startOf)
    {
        var parted = new List<T>[_clauses.Count];
        var next = 0;
        for (var clause = 0; clause < parted.Length; clause++)
        {
            parted[clause] = [];
            for (; next < all.Count && startOf(all[next]) < _clauses[clause].End; next++)
            {
                if (_clauses[clause].Has(startOf(all[next])))
                {
                    parted[clause].Add(all[next]);
                }
            }
        }

        return parted;
    }
}
