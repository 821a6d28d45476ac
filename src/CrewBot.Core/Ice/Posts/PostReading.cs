using UnitsNet;

namespace CrewBot.Core.Ice.Posts;

/// <summary>What has been read so far of one post.</summary>
/// <param name="names">Names of waters and spots, in lower case, as words.</param>
/// <param name="posted">When it was posted.</param>
/// <param name="isOfCatch">Whether the post tells of fish and never of ice.</param>
internal sealed class PostReading(IReadOnlyList<string[]> names, DateTimeOffset posted, bool isOfCatch)
{
    private const double HardStop = 4 * 0.0254;
    private const double Slip = 1e-9;

    private readonly List<PostFound> _found = [];
    private readonly List<PostedHazard> _hazards = [];
    private readonly List<UnitlessNumber> _unitless = [];
    private readonly List<PostedTime> _times = [];
    private string? _heading;
    private bool _isHeard;
    private bool _isAboutIce;
    private bool _isRemembered;
    private bool _wasOfCatch;

    public void Take(PostSentence sentence)
    {
        var (before, hazards) = (Count, _hazards.Count);
        _wasOfCatch = !PostMeasure.IsOfDrilling(sentence) && (_wasOfCatch || isOfCatch || PostMeasure.IsOfCatch(sentence));
        var scene = new PostScene(sentence, names, posted.Year, _isAboutIce, _wasOfCatch, _isHeard, _isRemembered);
        for (var clause = 0; clause < scene.Clauses.Count; clause++)
        {
            if (scene.IsReal(clause))
            {
                TakeClause(scene, clause);
            }
            else if (scene.IsHeading && PostTimes.In(sentence, scene.Clauses[clause], posted) is { } time)
            {
                _times.Add(time);
            }
        }

        MergeFrom(hazards);
        _isAboutIce |= scene.TellsOfIce || Count > 0 || (scene.IsQuestion && scene.Places.Count > 0 && !sentence.Has(PostWord.Wish | PostWord.Home | PostWord.Ad));
        _isRemembered = scene.Remembers(posted.Year);
        _isHeard = Count == before && scene.EndsInHearsay;

        // A sentence that only names a place heads what follows.
        if (scene.Places.Count > 0)
        {
            _heading = Count == before && (!scene.IsQuestion || scene.IsHeading) ? scene.Places[^1].Name : null;
        }
    }

    public IcePost Result()
    {
        var isContradictory = PostLayers.Contradict(_found);
        List<PostedThickness> thicknesses = isContradictory ? [] :
        [
            .. PostLayers.WithoutTotals(_found).Select(found =>
                new PostedThickness(Length.FromMeters(found.Least), Length.FromMeters(found.Most), found.Kind, found.Place, found.IsHedged, found.IsHearsay)),
        ];
        var post = new IcePost(thicknesses, [.. _hazards.Distinct()], _unitless, null, isContradictory);
        return post.IsEmpty ? IcePost.Nothing : post with { Time = _times.Count > 0 ? _times.MinBy(time => time.At) : null };
    }

    // "Broke through at the culvert, soaked to the hip" is one event.
    private void MergeFrom(int first)
    {
        if (_hazards.Count - first < 2)
        {
            return;
        }

        var told = _hazards[first..];
        var placed = told.Where(hazard => hazard.Place is not null).Select(hazard => hazard.Hazard).ToHashSet();
        _hazards.RemoveRange(first, told.Count);
        _hazards.AddRange(told.Where(hazard => hazard.Place is not null || !placed.Contains(hazard.Hazard)));
    }

    private int Count => _found.Count + _hazards.Count + _unitless.Count;

    private void TakeClause(PostScene scene, int clause)
    {
        if (!PostSense.IsComing(scene.Sentence, scene.Clauses[clause].Start, scene.Clauses[clause].End) && PostTimes.In(scene.Sentence, scene.Clauses[clause], posted) is { } time)
        {
            _times.Add(time);
        }

        var isHearsay = scene.IsHearsay(clause);
        foreach (var quantity in scene.QuantitiesOf(clause))
        {
            var place = scene.PlaceOf(quantity, clause) ?? _heading;
            if (quantity.Unit is null)
            {
                _unitless.Add(new(quantity.Least, place));
            }
            else if (!PostBounds.IsUpper(scene.Sentence, scene.Clauses[clause], quantity))
            {
                _found.Add(new(quantity.Least, quantity.Most, scene.KindOf(quantity, clause), place, scene.IsHedged(quantity, clause), isHearsay, scene.IsTotal(quantity)));
            }
            else if (quantity.Most <= HardStop + Slip)
            {
                _hazards.Add(new(IceHazard.Thin, place, isHearsay));
            }
        }

        foreach (var (hazard, at) in scene.HazardsOf(clause))
        {
            _hazards.Add(new(hazard, scene.PlaceOf(at, clause) ?? _heading, isHearsay));
        }
    }
}
