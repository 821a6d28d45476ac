namespace CrewBot.Core.Ice.Posts;

/// <summary>Tells what a length in a post is a measure of, by its head noun, its subject, its verb and its preposition.</summary>
internal static class PostMeasure
{
    /// <summary>How the words to the right of a quantity end what it measures.</summary>
    private enum Head
    {
        None,
        Ice,
        Other,
    }

    /// <summary>Whether a quantity is told of ice.</summary>
    /// <param name="sentence">Where it stands.</param>
    /// <param name="clause">Its clause.</param>
    /// <param name="quantity">The quantity, with or without a unit.</param>
    /// <param name="isAboutIce">Whether something else tells that ice is measured here: a place, a time, the word itself.</param>
    public static bool IsIce(PostSentence sentence, PostClause clause, PostQuantity quantity, bool isAboutIce)
    {
        var head = HeadOf(sentence, quantity);
        if (head == Head.Other || IsRule(sentence, quantity) || IsChange(sentence, clause, quantity))
        {
            return false;
        }

        if (head == Head.Ice)
        {
            return true;
        }

        if (IsDepth(sentence, quantity) || IsOfCatch(sentence, clause, quantity))
        {
            return false;
        }

        return SubjectOf(sentence, clause, quantity) switch
        {
            Head.Ice => !quantity.IsLong || IsPredicate(sentence, quantity),
            Head.Other => false,
            _ => isAboutIce && quantity is { IsLong: false, Unit: not null },
        };
    }

    /// <summary>Whether a sentence is of fish and not of ice: a length in it is a fish's.</summary>
    public static bool IsOfCatch(PostSentence sentence)
    {
        var first = sentence.Has(PostWord.Catch) && !IsOfDrilling(sentence) ? sentence.Find(0, sentence.Count, PostWord.Catch) : -1;
        return first >= 0 && (sentence[first].Text is not "pull" || sentence.Any(first + 1, sentence.Count, PostWord.Catch)); // a house is pulled out as well
    }

    /// <summary>Whether a sentence names ice, or how one comes to know its thickness.</summary>
    public static bool IsOfDrilling(PostSentence sentence)
    {
        if (sentence.Has(PostWord.Ice | PostWord.Thick))
        {
            return true;
        }

        for (var at = 0; sentence.Has(PostWord.Measure | PostWord.Thing) && at < sentence.Count; at++)
        {
            if (sentence[at].Text is "drill" or "drilled" or "auger" or "augered" or "spud" or "spudded" or "bore" or "hole")
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOfCatch(PostSentence sentence, PostClause clause, PostQuantity quantity) =>
        sentence.Any(clause.Start, quantity.Start, PostWord.Catch) && !sentence.Any(clause.Start, clause.End, PostWord.Ice);

    // "The ice is 2 ft", but not "the ice pulled away from the shore 3 ft".
    private static bool IsPredicate(PostSentence sentence, PostQuantity quantity)
    {
        var at = quantity.Start - 1;
        while (sentence[at].Is(PostWord.Hedge | PostWord.Limit | PostWord.Adverb))
        {
            at--;
        }

        return sentence[at].Is(PostWord.Ice | PostWord.Thick | PostWord.Kind | PostWord.Be | PostWord.Have | PostWord.Measure) || sentence[at].IsMark;
    }

    /// <summary>Whether ice is what a quantity is said to be of.</summary>
    public static bool IsOfIce(PostSentence sentence, PostQuantity quantity) => HeadOf(sentence, quantity) == Head.Ice;

    /// <summary>Whether a number without a unit stands where a thickness would: "5 of good ice", "measured 6".</summary>
    /// <param name="sentence">Where it stands.</param>
    /// <param name="clause">Its clause.</param>
    /// <param name="number">The number.</param>
    /// <param name="followsOne">Whether a thickness stands before it in the sentence.</param>
    /// <param name="isAboutIce">Whether ice has been told of.</param>
    public static bool LacksUnit(PostSentence sentence, PostClause clause, PostQuantity number, bool followsOne, bool isAboutIce)
    {
        if (IsCount(sentence, number) || IsRule(sentence, number) || IsChange(sentence, clause, number))
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
        var subject = SubjectOf(sentence, clause, number);
        return (endsHere || (followsOne && next.Is(PostWord.Part))) && subject != Head.Other
            && (subject == Head.Ice || sentence[number.Start - 1].Is(PostWord.Measure)
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

    // 5 inches of good clear ice; 5 inch walleye; 5 inches of snow; 5 inches from shore
    private static Head HeadOf(PostSentence sentence, PostQuantity quantity)
    {
        var at = quantity.End;
        while (sentence[at].Text is "+" or "plus" or "ish" or "total")
        {
            at++;
        }

        var isOf = sentence[at].Text is "of" or "o";
        at += isOf ? sentence[at + 1].Text is "it" ? 2 : 1 : 0;
        at += sentence[at].Is(PostWord.Hedge) && sentence[at].IsWord && sentence[at].Text is not "around" ? 1 : 0;
        var last = -1;
        for (var word = at; word < at + 6 && sentence[word].IsWord; word++)
        {
            var token = sentence[word];
            if (token.Is(PostWord.Ice))
            {
                return (sentence[word + 1].Is(PostWord.Thing) && !sentence[word + 1].Is(PostWord.Preposition)) || IsOnThing(sentence, word + 1) ? Head.Other : Head.Ice;
            }

            if (token.Is(PostWord.Thick))
            {
                return sentence[word + 1] is { IsWord: true, Words: PostWord.None, IsCapital: false } || sentence[word + 1].Is(PostWord.Thing) ? Head.Other : Head.Ice;
            }

            if ((token.Is(PostWord.Extent) && !IsBeforePlace(sentence, word)) || (token.Is(PostWord.Slush) && !sentence[word + 1].Is(PostWord.Ice)) || (token.Is(PostWord.Thing | PostWord.Water | PostWord.Home | PostWord.OtherUnit | PostWord.Vehicle) && !token.Is(PostWord.Kind | PostWord.Praise)))
            {
                return Head.Other;
            }

            if (Ends(token, isOf))
            {
                break;
            }

            last = word;
        }

        if (last < 0)
        {
            return (sentence[at].Text is "from" or "off" && quantity.IsLong) || IsOnThing(sentence, at) ? Head.Other : Head.None;
        }

        if (sentence.Any(at, last + 1, PostWord.Kind))
        {
            return Head.Ice;
        }

        // A head that nobody knows is not ice: a 22 inch tv, 2 inches of padding.
        return sentence[last].Words == PostWord.None && (isOf || sentence[quantity.End - 1].Raw is "inch" or "Inch" or "foot" || sentence[last].Raw.EndsWith("er", StringComparison.Ordinal))
            ? Head.Other
            : isOf && sentence[last].Is(PostWord.Praise) ? Head.Ice : Head.None;
    }

    // In the cabin, on my truck, into the snow: no ice of a lake.
    private static bool IsOnThing(PostSentence sentence, int at)
    {
        var noun = sentence[at + 1].Is(PostWord.Det) ? at + 2 : at + 1;
        return sentence[at].Text is "in" or "into" or "on" or "inside"
            && (sentence[noun].Is(PostWord.Thing | PostWord.Vehicle | PostWord.Home) || sentence[noun].Text is "cabin" or "house" or "boat" or "trailer" or "lodge" or "bucket")
            && sentence[noun].Text is not ("hole" or "track" or "line" or "drop") && !sentence[noun + 1].Is(PostWord.Place);
    }

    // Across the bay is where, across alone how wide.
    private static bool IsBeforePlace(PostSentence sentence, int at) =>
        sentence[at].Is(PostWord.Preposition) && (sentence[at + 1].Is(PostWord.Det | PostWord.Place | PostWord.PlaceAdj) || sentence[at + 1].IsCapital);

    private static bool Ends(PostToken token, bool isOf) =>
        !token.Is(PostWord.Praise | PostWord.Kind)
        && (token.Is(PostWord.Preposition | PostWord.Contrast | PostWord.Pronoun | PostWord.Be | PostWord.Have | PostWord.Measure | PostWord.Adverb | PostWord.Unreal | PostWord.No | PostWord.Part | PostWord.Day | PostWord.Catch)
            || token.Text is "and" or "with"
            || (token.Is(PostWord.Det | PostWord.Place | PostWord.PlaceAdj) && !isOf));

    // The nearest noun before the quantity: ice is, thickness:, the snow was, my auger is.
    private static Head SubjectOf(PostSentence sentence, PostClause clause, PostQuantity quantity)
    {
        for (var at = quantity.Start - 1; at >= clause.Start; at--)
        {
            var token = sentence[at];
            if (token.Is(PostWord.Ice) && sentence[at + 1].Is(PostWord.Thing) && !sentence[at + 1].Is(PostWord.Preposition))
            {
                return Head.Other; // an ice chisel
            }

            // She was 28 inches, he went 31: nobody says that of ice.
            if (token.Text is "she" or "he" && (sentence[at + 1].Is(PostWord.Be | PostWord.Catch) || sentence[at + 1].Text is "went" or "go" or "goes"))
            {
                return Head.Other;
            }

            if (token.Is(PostWord.Ice | PostWord.Thick) || (token.Is(PostWord.Water) && sentence[at - 1].Text is "hard"))
            {
                return Head.Ice;
            }

            if (token.Is(PostWord.Kind) && !token.Is(PostWord.Adverb))
            {
                return Head.Ice;
            }

            if (token.Is(PostWord.Measure) && !token.Is(PostWord.Thing))
            {
                return Head.None;
            }

            if (token.Is(PostWord.Thing | PostWord.Water | PostWord.Home) && !token.Is(PostWord.Place | PostWord.Preposition))
            {
                // Of holes the ice in them is told.
                return token.Text is "hole" || sentence.Any(at - 1, at, PostWord.Preposition) ? Head.None : Head.Other;
            }

            if (token is { Words: PostWord.None, IsWord: true } && !(token.IsCapital && at > 0) && sentence[at + 1].Is(PostWord.Be))
            {
                return Head.Other;
            }
        }

        // "Landed 3 walleye, 18 to 22 inches": the fish stand in the clause before.
        if (clause.Start > 0 && sentence[clause.Start - 1].Text is "," && quantity.Start <= clause.Start + 2
            && sentence.Any(0, clause.Start, PostWord.Catch) && !sentence.Has(PostWord.Ice))
        {
            return Head.Other;
        }

        // "Ice thickness: 5in": the head stands in the clause before.
        return clause.Start > 1 && sentence[clause.Start - 1].Text is ":" or "=" && sentence[clause.Start - 2].Is(PostWord.Ice | PostWord.Thick) ? Head.Ice : Head.None;
    }

    // In 12 feet, down 20, every 10 feet: where a line hangs or people stand.
    private static bool IsDepth(PostSentence sentence, PostQuantity quantity)
    {
        var at = quantity.Start - 1;
        at -= sentence[at].Is(PostWord.Hedge) && sentence[at].IsWord ? 1 : 0;
        return (sentence[at].Text is "over" or "under" && PostNumber.One(sentence, at - 1) is not null) // two over 20 inches
            || sentence[at].Text is "down" or "up" or "within" or "every" or "by"
            || (quantity.IsLong && sentence[at].Text is "in" or "at" or "for" or "up" or "out" or "to");
    }

    // 4 inches for walking; 4 inches is enough; 4 inches to walk
    private static bool IsRule(PostSentence sentence, PostQuantity quantity)
    {
        var at = quantity.End;
        while (sentence[at].Is(PostWord.Ice | PostWord.Kind | PostWord.Praise) || sentence[at].Text is "of" or "thick")
        {
            at++;
        }

        var isCopula = sentence[at].Is(PostWord.Be) || sentence[at].Text is "will" or "should" or "can";
        return sentence.Says(at, "to", "go")
            || (sentence[at].Text is "for" or "to" or "per" or "before" && sentence.Any(at + 1, at + 4, PostWord.Use | PostWord.Vehicle))
            || (isCopula && (sentence.Any(at + 1, at + 3, PostWord.Safe | PostWord.Wish) || sentence[at + 1].Text is "plenty" or "hold" or "support" or "the"))
            || sentence[at].Text is "hold" or "support";
    }

    private static bool IsChange(PostSentence sentence, PostClause clause, PostQuantity quantity)
    {
        var at = quantity.Start - 1;
        while (at >= clause.Start && (sentence[at].Is(PostWord.Hedge | PostWord.Limit | PostWord.Det) || sentence[at].Text is "on" or "only" or "just" or "of" or "up"))
        {
            at--;
        }

        return (at >= clause.Start && ((sentence[at].Is(PostWord.Change) && sentence[at + 1].Text is not ("like" or "or")) || sentence[at].Text is "made" or "make" or "put" || (sentence[at].Text is "by" && sentence.Any(clause.Start, at, PostWord.Change))))
            || (sentence.Has(PostWord.Praise) && sentence.SaysAnywhere(quantity.End, clause.End, "overnight")) || sentence[quantity.End].Text is "more" or "since" or "fell" or "fallen" or "falling" || (sentence[quantity.End].Text is "coming" && !sentence[quantity.End + 1].Is(PostWord.Preposition)) || (sentence[quantity.End].Text is "of" && sentence[quantity.End + 1].Text is "growth" or "new") && sentence[quantity.End + 2].Text is "growth";
    }
}
