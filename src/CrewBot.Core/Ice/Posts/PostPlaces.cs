namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds places: after prepositions, by the nouns that places are called by, and by names that the crew knows.</summary>
internal static class PostPlaces
{
    private const int LongestUnknown = 3;
    private const int Longest = 8;

    /// <summary>All places of a sentence, in order.</summary>
    /// <param name="sentence">Where to look.</param>
    /// <param name="taken">Tokens that belong to quantities.</param>
    /// <param name="names">Names of waters and spots, in lower case, as words.</param>
    public static List<PostPlace> AllIn(PostSentence sentence, IReadOnlyList<PostQuantity> taken, IReadOnlyList<string[]> names)
    {
        var found = new List<PostPlace>();
        var next = 0;
        for (var at = 0; at < sentence.Count; at++)
        {
            while (next < taken.Count && (taken[next].End <= at || taken[next].Unit is null))
            {
                next++;
            }

            if (next < taken.Count && at >= taken[next].Start)
            {
                continue;
            }

            if (At(sentence, at, names) is { } place)
            {
                at = place.End - 1;
                if (!place.Name.Equals("lake", StringComparison.OrdinalIgnoreCase))
                {
                    found.Add(place);
                }
            }
        }

        return found;
    }

    private static PostPlace? At(PostSentence sentence, int at, IReadOnlyList<string[]> names)
    {
        if (Known(sentence, at, names) is var known and > 0)
        {
            var end = Noun(sentence, at + known, 0);
            return Put(sentence, at, at, Math.Max(at + known, end));
        }

        if (!sentence[at].Is(PostWord.Preposition) || (sentence[at].Text is "of" && sentence[at - 1].Is(PostWord.Unit)))
        {
            var bare = sentence[at].Is(PostWord.Det) && sentence[at].Text is "the" ? at + 1 : at;
            var last = IsNounAt(sentence, bare) ? Noun(sentence, bare, sentence[bare - 1].IsWord ? 0 : 1) : -1;
            return last > bare ? Put(sentence, at, bare, last) : null;
        }

        var (from, isStrong) = (at, false);
        while (sentence[from].Is(PostWord.Preposition) && !(sentence[from].Is(PostWord.PlaceAdj | PostWord.Place) && sentence[from + 1].Is(PostWord.Place)))
        {
            isStrong |= sentence[from].Is(PostWord.Strong);
            from++;
        }

        if (sentence[from].Text is "front" && sentence[from + 1].Text is "of")
        {
            (from, isStrong) = (from + 2, true);
        }

        var start = from;
        while (sentence[start].Is(PostWord.Det) && start < from + 2)
        {
            start++;
        }

        if (Known(sentence, start, names) is var name and > 0)
        {
            return Put(sentence, at, start, Math.Max(start + name, Noun(sentence, start + name, 0)));
        }

        var noun = Noun(sentence, start, LongestUnknown);
        if (noun > start)
        {
            noun = sentence[at].Text is "between" && sentence[noun].Text is "and" && Noun(sentence, Article(sentence, noun + 1), LongestUnknown) is var both && both > noun + 1 ? both : noun;
            return Put(sentence, at, start, noun);
        }

        // After a thickness, "at" can only be where: 3 in. at beaver house; and "at the portage" is where as well.
        isStrong |= sentence[from - 1].Text is "at" or "@" && (start > from || sentence[at - 1].Is(PostWord.Unit | PostWord.Ice | PostWord.Kind));
        var unknown = Name(sentence, start, isStrong);
        return unknown > start ? Put(sentence, at, start, unknown) : null;
    }

    // ... north end of Loon Basin: after the last noun that a place is called by; the start when there is none.
    private static int Noun(PostSentence sentence, int start, int unknown)
    {
        var (at, end) = (start, start);
        while (at < start + Longest)
        {
            var token = sentence[at];
            if (IsNoun(sentence, at))
            {
                at += IsNumbered(sentence, at) ? 2 : 1;
                end = at;
                continue;
            }

            var isName = token.IsCapital && !(token.Is(PostWord.WeakKind) && sentence[at - 1].Text.Length == 0) && (sentence[at - 1].Text.Length > 0 || IsNoun(sentence, at + 1)) && (token.Words == PostWord.None || token.Is(PostWord.Kind | PostWord.Thing | PostWord.Praise));
            if ((token.Is(PostWord.PlaceAdj) && token.IsWord) || IsCompass(sentence, at) || (token.Is(PostWord.Ad) && IsNoun(sentence, at + 1)) || isName)
            {
                at++;
                continue;
            }

            if (token is { IsWord: true, Words: PostWord.None } && at - start < unknown && end == start)
            {
                at++;
                continue;
            }

            if (end == at && end > start && token.Text is "of")
            {
                var next = Article(sentence, at + 1);
                var tail = Noun(sentence, next, LongestUnknown);
                return tail > next ? tail : Name(sentence, next, false) is var name && name > next ? name : end;
            }

            // Dock Rd, Camp Oaks
            return end + (end > start && sentence[end] is { IsCapital: true, Words: PostWord.None } && sentence[end - 1].IsCapital ? 1 : 0);
        }

        return end;
    }

    /// <summary>Whether a place is known by its number: marker 12.</summary>
    public static bool IsNumbered(PostSentence sentence, int at) =>
        sentence[at].Text is "marker" or "buoy" or "stake" && sentence[at + 1].Number is not null && !sentence[at + 2].Is(PostWord.Unit);

    private static int Article(PostSentence sentence, int at) => sentence[at].Is(PostWord.Det) ? at + 1 : at;

    private static bool IsNounAt(PostSentence sentence, int at) =>
        IsNoun(sentence, at) || sentence[at].Is(PostWord.PlaceAdj) || IsCompass(sentence, at) || (sentence[at].IsCapital && sentence[at].Words == PostWord.None && at > 0)
        || (sentence[at + 1].IsWord && IsNoun(sentence, at + 1) && (sentence[at].IsCapital || (sentence[at] is { IsWord: true, Words: PostWord.None } && !sentence[at - 1].IsWord)));

    // "Hole", "pocket", "line" and "drop" name places only beside other words of a place.
    private static bool IsNoun(PostSentence sentence, int at)
    {
        var token = sentence[at];
        return token.IsWord && token.Is(PostWord.Place)
            && !(token.Text is "lake" && sentence[at + 1].Is(PostWord.Ice))
            && !(token.Text is "neck" or "arm" or "heart" && sentence[at - 1].Text is "my" or "his" or "her" or "their" or "your" or "our")
            && !(token.Text is "side" && sentence[at - 1].Text is "both" or "either")
            && !(token.Text is "bar" && sentence[at + 1].Is(PostWord.Say))
            && !(token.Text is "sound" or "lock" && !sentence[at - 1].Is(PostWord.Det | PostWord.PlaceAdj) && !sentence[at - 1].IsCapital)
            && !(token.Text is "point" && sentence[at - 1].Is(PostWord.Det) && sentence[at - 1].Text is "this")
            && !(token.Text is "spring" && (sentence[at + 1].Is(PostWord.Be) || sentence[at - 1].Text is "last" or "this" or "next"))
            && !(token.Text is "hole" or "pocket" or "line" or "drop" && !(sentence[at - 1].Is(PostWord.Place | PostWord.PlaceAdj) || (sentence[at - 1].IsCapital && sentence[at - 1].Words == PostWord.None)));
    }

    // N bay, the nw arm
    private static bool IsCompass(PostSentence sentence, int at) =>
        sentence[at].Text is "n" or "s" or "e" or "w" or "ne" or "nw" or "se" or "sw" && IsNoun(sentence, at + 1);

    // A place by its name alone: off Millers, at Tamarack.
    private static int Name(PostSentence sentence, int start, bool isStrong)
    {
        var at = start;
        while (at < start + LongestUnknown && sentence[at] is { IsWord: true } token
            && ((token.IsCapital && !token.Is(PostWord.Day | PostWord.Season | PostWord.Ice | PostWord.Pronoun | PostWord.NotPlace | PostWord.Person)) || (isStrong && (token.Words == PostWord.None || (at > start && token.Is(PostWord.Thing) && !token.Is(PostWord.Kind | PostWord.Praise))))))
        {
            at++;
        }

        return at;
    }

    private static int Known(PostSentence sentence, int at, IReadOnlyList<string[]> names)
    {
        foreach (var name in names)
        {
            var word = 0;
            while (word < name.Length && sentence[at + word].Raw.Equals(name[word], StringComparison.OrdinalIgnoreCase))
            {
                word++;
            }

            if (word == name.Length)
            {
                return word;
            }
        }

        return 0;
    }

    private static PostPlace Put(PostSentence sentence, int start, int from, int end) =>
        new(start, end, string.Join(' ', Enumerable.Range(from, end - from).Select(at => at == end - 1 && sentence[at].Is(PostWord.Place) ? WithoutIs(sentence[at].Raw) : sentence[at].Raw)));

    // The bay's got 5 inches.
    private static string WithoutIs(string noun) => noun.Length > 2 && noun[^1] is 's' && noun[^2] is '\'' or '’' ? noun[..^2] : noun;
}
