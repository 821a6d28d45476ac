namespace CrewBot.Core.Ice.Posts;

/// <summary>Whether a clause says how things are: or asks, wishes, foretells, remembers, sells or jokes.</summary>
internal static class PostSense
{
    private const int Reach = 12;

    /// <summary>Whether a clause asks, question mark or none.</summary>
    public static bool Asks(PostSentence sentence, IReadOnlyList<PostClause> clauses, int at)
    {
        var clause = clauses[at];
        return OpensLikeQuestion(sentence, clause)
            || (sentence.Asks && !IsTold(sentence) && (at == clauses.Count - 1 || !clauses.Skip(at + 1).Take(Reach).Any(later => OpensLikeQuestion(sentence, later))));
    }

    // "We measured 9 yesterday and 8 today??" wonders at what it tells.
    private static bool IsTold(PostSentence sentence) =>
        sentence[0].Is(PostWord.First) && sentence[1].Is(PostWord.Measure) && !sentence.Has(PostWord.Ask);

    /// <summary>Whether what is said at a place is not said to be so: wished, needed, foretold or only if.</summary>
    public static bool IsUnreal(PostSentence sentence, PostClause clause, int at)
    {
        return (sentence.Has(PostWord.No) && sentence.SaysAnywhere(Math.Max(0, clause.Start - 2), at, "no", "way"))
            || (sentence.Has(PostWord.First) && (sentence.SaysAnywhere(clause.Start, at, "i'd", "like") || sentence.SaysAnywhere(clause.Start, at, "we'd", "like") || sentence.SaysAnywhere(clause.Start, at, "i'd", "love")))
            || (sentence.Has(PostWord.Unreal) && Enumerable.Range(clause.Start, Math.Max(0, at - clause.Start)).Any(marker => IsUnrealMarker(sentence, marker)))
            || IsComing(sentence, at, clause.End)
            || IsImperative(sentence, clause);
    }

    /// <summary>Whether a clause is about days to come, from a place on.</summary>
    public static bool IsComing(PostSentence sentence, int from, int to)
    {
        for (var at = from; at < to; at++)
        {
            if ((sentence[at].Is(PostWord.Future) && sentence[at].Text is "tomorrow" or "tmrw" or "tmw" or "soon" or "eventually")
                || (sentence[at].Text is "by" or "next" && ((sentence[at + 1].Is(PostWord.Day | PostWord.Season) && !sentence[at + 1].Is(PostWord.Place)) || sentence[at + 1].Text is "week" or "weekend" or "tomorrow" or "christmas" or "then"
                    || (sentence[at + 1].Text is "the" or "next" or "this" or "new" && sentence[at + 2].Is(PostWord.Day | PostWord.Season | PostWord.Part) && !sentence[at + 2].Is(PostWord.Place)))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a clause is about another season.</summary>
    public static bool IsPast(PostSentence sentence, PostClause clause, int year)
    {
        for (var at = clause.Start; at < clause.End; at++)
        {
            var (token, next) = (sentence[at], sentence[at + 1]);
            var isPast = token.Text switch
            {
                "last" or "previous" => next.Is(PostWord.Season),
                "ago" => sentence[at - 1].Is(PostWord.Season) || sentence[at - 1].Text is "month",
                "back" => next.Text is "in" && (sentence[at + 2].Number is > 31 || sentence[at + 2].Text is "the" or "my"),
                "in" or "of" => next.Number is >= 1900 && next.Number < year,
                "used" => next.Text is "to",
                "seen" => sentence[at - 1].Text is "have" or "i've" or "ive" or "ever" or "never" or "we've",
                "when" => next.Text is "i" && sentence[at + 2].Text is "was" && sentence[at + 3].Is(PostWord.Det),
                "remember" or "remembered" or "record" => true,
                "days" or "day" => sentence[at - 1].Text is "old" && sentence[at - 2].Is(PostWord.Det),
                _ => false,
            };
            if (isPast)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a sentence passes on a rule: "Dad always said 4 inches and stay off".</summary>
    public static bool Teaches(PostSentence sentence)
    {
        var always = sentence.Find(0, sentence.Count, PostWord.Wish);
        while (always >= 0 && sentence[always].Text is not "always")
        {
            always = sentence.Find(always + 1, sentence.Count, PostWord.Wish);
        }

        return always >= 0 && sentence[always + 1].Is(PostWord.Say);
    }

    /// <summary>Whether a clause comes back to the present.</summary>
    public static bool IsNow(PostSentence sentence, PostClause clause) =>
        sentence.SaysAnywhere(clause.Start, clause.End, "now") || sentence.SaysAnywhere(clause.Start, clause.End, "today")
        || sentence.SaysAnywhere(clause.Start, clause.End, "currently") || sentence.SaysAnywhere(clause.Start, clause.End, "this", "year") || sentence.SaysAnywhere(clause.Start, clause.End, "this", "yr")
        || sentence.SaysAnywhere(clause.Start, clause.End, "this", "morning");

    /// <summary>Whether a sentence is of today: by a day or hour in it, or by its verb.</summary>
    public static bool IsOfToday(PostSentence sentence)
    {
        if (sentence.Has(PostWord.Day | PostWord.Part) || IsNow(sentence, new(0, sentence.Count)))
        {
            return true;
        }

        for (var at = 0; at < sentence.Count; at++)
        {
            if (sentence[at].Text is "is" or "are" or "it's" or "there's" or "theres" or "that's" or "i'm" or "we're" or "am")
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether somebody sells something; a rental dock and a big deal are not for sale.</summary>
    public static bool Sells(PostSentence sentence)
    {
        for (var at = sentence.Find(0, sentence.Count, PostWord.Ad); at >= 0; at = sentence.Find(at + 1, sentence.Count, PostWord.Ad))
        {
            if (!sentence[at + 1].Is(PostWord.Place) && !(sentence[at].Text is "call" && sentence[at + 1].Is(PostWord.Pronoun | PostWord.Det)) && !(sentence[at].Text is "deal" && sentence[at - 1].Text is "big" or "real"))
            {
                return true;
            }
        }

        return false;
    }

    public static bool Jokes(PostSentence sentence) =>
        sentence.Has(PostWord.Joke) && !sentence.Has(PostWord.No)
        || sentence.Says(sentence.Count - 2, "/", "s")
        || sentence.SaysAnywhere(0, sentence.Count, "yeah", "right");

    /// <summary>Whether a sentence agrees too readily to be meant: "sure, there's 5 feet".</summary>
    public static bool Mocks(PostSentence sentence) =>
        (sentence[0].Text is "sure" or "suure" && !sentence[1].Is(PostWord.Be)) || sentence.SaysAnywhere(0, 3, "oh", "sure") || sentence.SaysAnywhere(0, 3, "yeah", "sure");

    /// <summary>Whether it is about ice at home: in a glass, on a windshield.</summary>
    public static bool IsAtHome(PostSentence sentence, PostClause clause) =>
        sentence.Find(clause.Start, clause.End, PostWord.Home) is var home and >= 0
        && !(sentence[home].Text is "drink" && sentence[home - 1].Text is "the" && !sentence.Any(clause.Start, clause.End, PostWord.Ice)); // in the drink is in the lake

    /// <summary>Whether a clause passes on somebody else's word.</summary>
    public static bool IsHearsay(PostSentence sentence, PostClause clause)
    {
        if (sentence.Find(clause.Start, clause.End, PostWord.Hear) is var hears and >= 0
            && !(sentence[hears].Text is "word" && sentence[hears + 1].Text is not ("is" or "has" or "on"))
            && sentence[hears - 1].Text is not ("can" or "could") && !(sentence[hears - 1].Is(PostWord.No) && sentence[hears].Raw is "hear")) // the ice itself
        {
            return true;
        }

        if (IsQuoted(sentence, clause))
        {
            return true;
        }

        var person = sentence.Find(clause.Start, clause.End, PostWord.Person);
        return person >= 0
            && !(sentence[person].Raw.EndsWith("'s", StringComparison.Ordinal) && sentence[person + 1].Is(PostWord.Thing) && !sentence[person + 1].Is(PostWord.Vehicle)) // somebody's flag is up
            && !IsAddressed(sentence, person)
            && !sentence.Any(clause.Start, person, PostWord.First | PostWord.Preposition)
            && !sentence.Any(person + 1, person + 3, PostWord.First)
            && sentence.Any(person + 1, clause.End, PostWord.Say | PostWord.Measure | PostWord.Have | PostWord.Be | (IsRelated(sentence, person) ? PostWord.Fall | PostWord.Vehicle : PostWord.None));
    }

    // Careful guys the ice is thin; people it's 2 inches.
    private static bool IsAddressed(PostSentence sentence, int person) =>
        sentence[person].Raw.EndsWith('s') && (sentence[person + 1].Is(PostWord.Det)
            || (sentence[person + 1].Is(PostWord.Pronoun) && sentence[person + 1].Text is not ("he" or "she" or "they" or "they're" or "he's" or "she's")));

    // The club says, said the ridge broke; not "I'd say", "sonar says" or "say 5 inches".
    private static bool IsQuoted(PostSentence sentence, PostClause clause)
    {
        var says = sentence.Find(clause.Start, clause.End, PostWord.Say);
        if (says < 0 || !(sentence[says].Raw is "said" or "sez" or "told" || sentence[says].Raw.EndsWith("ys", StringComparison.Ordinal) || sentence[says].Text is "swear" or "claim" && sentence[says].Raw.EndsWith('s')))
        {
            return false;
        }

        var before = sentence[says - 1];
        return says == clause.Start || (before is { IsWord: true, Words: PostWord.None } or { IsCapital: true } && before.Text is not ("tape" or "ruler" or "gauge" or "stick" or "bar")) || (before.Is(PostWord.Place | PostWord.Vehicle) && before.Text is not "bar");
    }

    // My cousin, buddy's sled: somebody that the writer knows it from.
    private static bool IsRelated(PostSentence sentence, int person) =>
        sentence[person - 1].Text is "my" or "our" || sentence[person].Raw.EndsWith("'s", StringComparison.Ordinal) || sentence[person].Raw.EndsWith('s') && !sentence[person].Text.EndsWith('s');

    /// <summary>Whether the writer speaks for himself.</summary>
    public static bool IsOwn(PostSentence sentence, PostClause clause) => sentence[clause.Start].Is(PostWord.First) || sentence[clause.Start + 1].Is(PostWord.First);

    // Advice tells nobody what is there: "never go out on less than 4 inches".
    private static bool IsImperative(PostSentence sentence, PostClause clause)
    {
        var first = sentence[clause.Start].Text is "please" or "so" or "just" ? clause.Start + 1 : clause.Start;
        return (sentence[first].Text is "never" or "don't" or "dont" or "do" && sentence[sentence[first + 1].Text is "not" ? first + 2 : first + 1].Text is "go" or "walk" or "step" or "drive" or "bring" or "venture" or "fish" or "fall")
            || sentence[first].Text is "go" or "bring" or "remember";
    }

    private static bool IsUnrealMarker(PostSentence sentence, int marker) =>
        sentence[marker].Is(PostWord.Unreal)
        && !IsRemembered(sentence, marker)
        && !(sentence[marker].Text is "doubt" && sentence[marker - 1].Is(PostWord.No))
        && !(sentence[marker].Text is "would" && sentence[marker + 1].Is(PostWord.Hedge))
        && sentence[marker + 1].Text is not "lie"; // not gonna lie

    // "When we drilled" is of then, "when we get 5 inches" is not of now.
    private static bool IsRemembered(PostSentence sentence, int marker) =>
        sentence[marker].Text is "when" or "once" or "before"
        && (sentence[marker + 2].Raw.EndsWith("ed", StringComparison.OrdinalIgnoreCase) || sentence[marker + 2].Raw is "was" or "were" or "had" or "got" or "went" or "left");

    private static bool OpensLikeQuestion(PostSentence sentence, PostClause clause)
    {
        var at = clause.Start;
        while (at < clause.End && (sentence[at].Text is "so" or "hey" or "ok" or "and" or "well" or "guys" or "folks" or "yo" or "hi" or "hello" or "just" or "but"))
        {
            at++;
        }

        var (first, second) = (sentence[at], sentence[at + 1]);
        // Where the shacks are, what we found: inside a statement these only join.
        var joins = clause.Start > 0 && !sentence.Asks && first.Text is "where" or "what" or "who" or "which" or "why";
        return sentence.Any(at, Math.Min(at + 2, clause.End), PostWord.Ask) && !joins && !(first.Text is "what" && second.Text is "a")
            || (first.Text is "is" or "are" or "does" or "do" or "did" or "has" or "have" or "can" or "could" or "would" or "should" or "was" && (second.Is(PostWord.Pronoun | PostWord.Det | PostWord.Person | PostWord.Ice) || second.Text is "there" or "any"))
            || first.Text is "any"
            || (first.Text is "look" or "looking" && second.Text is "for")
            || (first.Text is "let" && second.Text is "me");
    }
}
