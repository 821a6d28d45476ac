namespace CrewBot.Core.Ice.Posts;

/// <summary>One sentence of a post, understood: its clauses, what each says, of what and where.</summary>
internal sealed class PostScene
{
    private readonly List<PostQuantity> _quantities;
    private readonly bool[] _isReal;
    private readonly bool[] _isHearsay;
    private readonly bool[] _isOnTop;
    private readonly List<PostQuantity>[] _thicknesses;
    private readonly List<(IceHazard Hazard, int At)>[] _hazards;
    private readonly bool _isAboutIce;
    private readonly bool _isUnmeasured;
    private readonly bool _isRemembered;
    private readonly PostSpots _spots;
    private readonly int _gap;

    /// <summary>Reads a sentence.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="names">Names of waters and spots, in lower case, as words.</param>
    /// <param name="year">When the post was written.</param>
    /// <param name="isAboutIce">Whether the post has told of ice before.</param>
    /// <param name="isOfCatch">Whether lengths are those of fish, as far as the sentence does not name ice.</param>
    /// <param name="isHeard">Whether the sentence before was about somebody else's word.</param>
    /// <param name="isRemembered">Whether the sentence before went back to another season and said no more than that.</param>
    public PostScene(PostSentence sentence, IReadOnlyList<string[]> names, int year, bool isAboutIce, bool isOfCatch, bool isHeard, bool isRemembered)
    {
        Sentence = sentence;
        _quantities = PostQuantity.AllIn(sentence);
        Clauses = PostClauses.Of(sentence, _quantities);
        Places = PostPlaces.AllIn(sentence, _quantities, names);
        _isReal = RealOnes(year);
        _isRemembered = isRemembered && !PostSense.IsOfToday(sentence);
        _isHearsay = HeardOnes(isHeard);
        TellsOfIce = sentence.Has(PostWord.Ice | PostWord.Thick | PostWord.Measure | PostWord.Overflow) || sentence.SaysAnywhere(0, sentence.Count, "hole") || sentence.SaysAnywhere(0, sentence.Count, "walk", "out");
        _isAboutIce = !isOfCatch && (isAboutIce || TellsOfIce || Places.Count > 0 || IsFragment() || _quantities.Any(quantity => PostMeasure.IsOfIce(sentence, quantity)));
        _hazards = [.. Enumerable.Range(0, Clauses.Count).Select(clause => _isReal[clause] ? PostHazards.In(sentence, Clauses[clause]).ToList() : [])];
        _isOnTop = [.. Clauses.Select(IsOnTop)];
        _gap = Gap();
        _isUnmeasured = PostBounds.IsUnmeasured(sentence);
        _thicknesses = Thicknesses();
        _spots = new(sentence, Clauses, Places, Told());
    }

    public PostSentence Sentence { get; }

    public IReadOnlyList<PostClause> Clauses { get; }

    public IReadOnlyList<PostPlace> Places { get; }

    public bool IsQuestion => Sentence.Asks;

    /// <summary>Whether it asks nothing but names what is told next: "Today? 4 inches."</summary>
    public bool IsHeading => Sentence.Asks && !Sentence.Has(~(PostWord.Place | PostWord.PlaceAdj | PostWord.Preposition | PostWord.Det | PostWord.Day | PostWord.Part | PostWord.Adverb | PostWord.Join | PostWord.NotPlace));

    /// <summary>Whether it goes back to another season and gives no measure of it: what comes next may.</summary>
    public bool Remembers(int year) => Clauses.All(clause => PostSense.IsPast(Sentence, clause, year)) && !_quantities.Any(quantity => quantity.Unit is not null);

    /// <summary>Whether it is about ice at all.</summary>
    public bool TellsOfIce { get; }

    /// <summary>Whether what comes next may still be somebody else's word.</summary>
    public bool EndsInHearsay => _isHearsay.Length > 0 && _isHearsay[^1];

    /// <summary>Whether a clause says how things are now.</summary>
    public bool IsReal(int clause) => _isReal[clause];

    public bool IsHearsay(int clause) => _isHearsay[clause];

    /// <summary>Whether a thickness is only about, maybe, or by eye.</summary>
    public bool IsHedged(PostQuantity quantity, int clause) => _isUnmeasured || PostBounds.IsHedged(Sentence, Clauses[clause], quantity);

    /// <summary>The thicknesses of a clause, and the numbers that would be if they had a unit.</summary>
    public IReadOnlyList<PostQuantity> QuantitiesOf(int clause) => _thicknesses[clause];

    public IReadOnlyList<(IceHazard Hazard, int At)> HazardsOf(int clause) => _hazards[clause];

    public string? PlaceOf(PostQuantity quantity, int clause) => _spots.Of(quantity.Start, quantity.End, clause, _isOnTop[clause] || KindOf(quantity, clause) != IceKind.Unknown);

    public string? PlaceOf(int hazard, int clause) => _spots.Of(hazard, hazard + 1, clause, _isOnTop[clause]);

    public IceKind KindOf(PostQuantity quantity, int clause)
    {
        if (quantity.End <= _gap)
        {
            return IceKind.Layered;
        }

        var own = PostKinds.Of(Sentence, Clauses[clause], quantity, _thicknesses[clause].Count == 1);
        return own == IceKind.Unknown && clause + 1 < Clauses.Count && _thicknesses[clause + 1].Count == 0 && quantity.Unit is not null
            ? PostKinds.OfRemark(Sentence, Clauses[clause + 1])
            : own;
    }

    /// <summary>Whether a quantity is said to be all there is.</summary>
    public bool IsTotal(PostQuantity quantity) =>
        Sentence[quantity.Start - 1].Text is "total" || (Sentence[quantity.Start - 2].Text is "total" && Sentence[quantity.Start - 1].Text is "of" or "is" or "was" or ":") || Sentence[quantity.End].Text is "total" || Sentence[quantity.End + 1].Text is "total"
        || Sentence.SaysAnywhere(quantity.End, quantity.End + 3, "in", "all") || Sentence[quantity.End].Text is "altogether" || Sentence[quantity.End + 2].Text is "total";

    // Clauses that ask, are of another season, sell, mock or are about ice at home say nothing of the lake.
    private bool[] RealOnes(int year)
    {
        var real = new bool[Clauses.Count];
        var (isPast, isAtHome, isNone) = (false, false, PostSense.Sells(Sentence) || PostSense.Teaches(Sentence));
        for (var clause = 0; clause < real.Length; clause++)
        {
            isPast = PostSense.IsPast(Sentence, Clauses[clause], year) || (isPast && !PostSense.IsNow(Sentence, Clauses[clause]) && Sentence[Clauses[clause].Start].Text is not "but");
            isAtHome = PostSense.IsAtHome(Sentence, Clauses[clause]) || (isAtHome && !Places.Any(place => Clauses[clause].Has(place.Start)));
            real[clause] = !isPast && !PostSense.Asks(Sentence, Clauses, clause) && !isAtHome && !isNone;
        }

        return real;
    }

    private bool[] HeardOnes(bool isHeard)
    {
        var heard = new bool[Clauses.Count];
        for (var clause = 0; clause < heard.Length; clause++)
        {
            var isOwn = PostSense.IsOwn(Sentence, Clauses[clause]);
            isHeard = PostSense.IsHearsay(Sentence, Clauses[clause]) || (isHeard && !isOwn);
            heard[clause] = isHeard;
        }

        // "6 inches at the landing, according to my buddy"
        if (heard.Length > 1 && heard[^1] && !_quantities.Any(quantity => Clauses[^1].Has(quantity.Start)) && !Sentence.Any(Clauses[^1].Start, Clauses[^1].End, PostWord.Place | PostWord.Slush | PostWord.Open | PostWord.Crack | PostWord.Fall | PostWord.Through))
        {
            Array.Fill(heard, true);
        }

        return heard;
    }

    private List<PostQuantity>[] Thicknesses()
    {
        var thicknesses = new List<PostQuantity>[Clauses.Count];
        var (wasUnreal, isFollowing, isMocked, next) = (false, false, _isRemembered || PostSense.Mocks(Sentence), 0);
        for (var clause = 0; clause < thicknesses.Length; clause++)
        {
            thicknesses[clause] = [];
            var inherits = wasUnreal && !Sentence.Says(Clauses[clause].Start, "more", "like") && !Sentence.Any(Clauses[clause].Start, Clauses[clause].End, PostWord.Have | PostWord.Be | PostWord.First | PostWord.Measure | PostWord.Contrast);
            wasUnreal = inherits;
            for (; next < _quantities.Count && _quantities[next].Start < Clauses[clause].End; next++)
            {
                var quantity = _quantities[next];
                if (inherits || PostSense.IsUnreal(Sentence, Clauses[clause], quantity.Start))
                {
                    wasUnreal = true;
                }
                else if (_isReal[clause] && !isMocked && Clauses[clause].Has(quantity.Start) && IsThickness(clause, quantity, isFollowing))
                {
                    thicknesses[clause].Add(quantity);
                    isFollowing |= quantity.Unit is not null;
                }
            }
        }

        return thicknesses;
    }

    private bool IsThickness(int clause, PostQuantity quantity, bool isFollowing) =>
        quantity.Unit is null ? PostMeasure.LacksUnit(Sentence, Clauses[clause], quantity, isFollowing, _isAboutIce)
        : quantity.Most < 1000 && quantity.Least > 0 && (_gap < 0 || quantity.Start < _gap) && PostMeasure.IsIce(Sentence, Clauses[clause], quantity, _isAboutIce);

    // 3 inches, then a layer of water, then ice again: nothing below the water counts.
    private int Gap()
    {
        for (var at = 1; at < Sentence.Count; at++)
        {
            var isLayer = Sentence[at].Text.StartsWith("layer", StringComparison.Ordinal) || Sentence[at].Text is "then";
            if ((isLayer && Sentence.Any(at + 1, at + 4, PostWord.Water | PostWord.Slush)) || Sentence.Says(at, "air", "gap"))
            {
                return at;
            }
        }

        return -1;
    }

    private List<int> Told()
    {
        List<int> told = [.. _thicknesses.SelectMany(quantities => quantities.Select(quantity => quantity.Start)), .. _hazards.SelectMany(hazards => hazards.Select(hazard => hazard.At))];
        told.Sort();
        return told;
    }

    private bool IsOnTop(PostClause clause) =>
        Sentence.SaysAnywhere(clause.Start, clause.End, "on", "top") || Sentence.SaysAnywhere(clause.Start, clause.End, "there")
        || Sentence.SaysAnywhere(clause.Start, clause.End, "also") || Sentence.SaysAnywhere(clause.Start, clause.End, "too")
        || Sentence.SaysAnywhere(clause.Start, clause.End, "under", "me") || Sentence.SaysAnywhere(clause.Start, clause.End, "under", "us");

    // "About 6 inches." says nothing else, so it answers the question that everybody there asks.
    private bool IsFragment()
    {
        var (next, isMeasured) = (0, false);
        for (var at = 0; at < Sentence.Count; at++)
        {
            while (next < _quantities.Count && (_quantities[next].End <= at || _quantities[next].Unit is null))
            {
                next++;
            }

            var isTaken = next < _quantities.Count && at >= _quantities[next].Start;
            isMeasured |= isTaken;
            if (!isTaken && Sentence[at].IsWord
                && !Sentence[at].Is(PostWord.Hedge | PostWord.Praise | PostWord.Kind | PostWord.Adverb | PostWord.Day | PostWord.Part | PostWord.Det | PostWord.Limit | PostWord.OtherUnit))
            {
                return false;
            }
        }

        return isMeasured;
    }
}
