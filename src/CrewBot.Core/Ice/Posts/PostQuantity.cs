namespace CrewBot.Core.Ice.Posts;

/// <summary>A number of a post with its unit, or without.</summary>
/// <param name="Start">Its first token.</param>
/// <param name="End">After its last token.</param>
/// <param name="Least">The lower bound, in metres; as written when no unit was.</param>
/// <param name="Most">The upper bound.</param>
/// <param name="Unit">What the unit is in metres; null when none was written.</param>
/// <param name="IsVague">Whether it is told vaguely: a couple, 5ish.</param>
internal readonly record struct PostQuantity(int Start, int End, double Least, double Most, double? Unit, bool IsVague)
{
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;
    private const double MostFeet = 8;
    private const int Listed = 4;

    /// <summary>Whether distances and depths are told in its unit, so that ice must be named beside it.</summary>
    public bool IsLong => Unit > 0.1 && !(Unit == 1 && Most < 1); // nobody paces off 0.2 m

    /// <summary>Finds all of a sentence, in order.</summary>
    public static List<PostQuantity> AllIn(PostSentence sentence)
    {
        var found = new List<PostQuantity>();
        for (var at = 0; at < sentence.Count; at++)
        {
            if (At(sentence, at) is not { } quantity)
            {
                continue;
            }

            quantity = found.Count > 0 && quantity.Unit is null ? InUnitOf(sentence, quantity, found) : quantity;
            if (found.Count > 0 && IsGoodPart(sentence, found[^1], quantity) is { } end)
            {
                quantity = found[^1] with { End = end, Least = quantity.Least, Most = Math.Max(found[^1].Most, quantity.Most) };
                found.RemoveAt(found.Count - 1);
            }

            found.Add(quantity);
            at = Math.Max(at, quantity.End - 1);
        }

        return found;
    }

    // 6 inches, 4 of it clear; 5.25 in by the pump, 5.75 in mid bay.
    private static PostQuantity InUnitOf(PostSentence sentence, PostQuantity number, List<PostQuantity> before)
    {
        if (IsPart(sentence, number) && before[^1].Unit is { } unit)
        {
            return number with { End = number.End + 2, Least = number.Least * unit, Most = number.Most * unit, Unit = unit };
        }

        return sentence[number.End].Text is "in" && before[^Math.Min(before.Count, Listed)..].Any(other => other.Unit == Inch && sentence[other.End - 1].Text is "in")
            ? number with { End = number.End + 1, Least = number.Least * Inch, Most = number.Most * Inch, Unit = Inch }
            : number;
    }

    private static bool IsPart(PostSentence sentence, PostQuantity number) =>
        sentence[number.End].Text is "of" && sentence[number.End + 1].Text is "it" or "that" && !sentence[number.End + 2].Is(PostWord.Thing | PostWord.Catch);

    // "9 inches but only 4 of it is good" is 4 to 9; null when the second is no good part of the first, else where it ends.
    private static int? IsGoodPart(PostSentence sentence, PostQuantity whole, PostQuantity part)
    {
        var good = part.End + (sentence[part.End].Is(PostWord.Be) ? 1 : 0);
        return part.Unit is not null && sentence.Says(part.End - 2, "of", "it") && part.Least < whole.Least
            && sentence[good].Is(PostWord.Praise | PostWord.Safe) && !sentence[good].Is(PostWord.Kind) && !sentence[good + 1].Is(PostWord.Kind)
            ? good + 1 : null;
    }

    private static PostQuantity? At(PostSentence sentence, int at)
    {
        if (PostNumber.At(sentence, at) is not { } number)
        {
            return null;
        }

        if (With(sentence, at, number) is not { } quantity)
        {
            // Of a list without a unit, one number may still have its own: "at 7, 5 inches".
            return PostNumber.One(sentence, at) is { } first ? With(sentence, at, first) ?? new(at, number.Next, number.Least, number.Most, null, number.IsVague) : null;
        }

        return AndInches(sentence, quantity) ?? UpTo(sentence, quantity) ?? quantity;
    }

    private static PostQuantity? With(PostSentence sentence, int at, PostNumber number)
    {
        var (next, isVague) = (number.Next, number.IsVague);
        while (sentence[next].Text is "ish" or "+" or "plus" || (sentence[next].Text == "-" && sentence[next + 1].Is(PostWord.Unit)))
        {
            isVague |= sentence[next].Text is "ish";
            next++;
        }

        // Six solid inches.
        next += sentence[next].Is(PostWord.Praise) && sentence[next + 1].Text is "inch" or "foot" ? 1 : 0;
        if (UnitAt(sentence, next) is not { } unit)
        {
            return null;
        }

        next++;
        var more = PostNumber.HalfAt(sentence, next);
        return new(at, more?.Next ?? next, (number.Least + (more?.Least ?? 0)) * unit, (number.Most + (more?.Least ?? 0)) * unit, unit, isVague);
    }

    // 1 ft 2 in; but "40 ft 2 inches" is how far and how thick.
    private static PostQuantity? AndInches(PostSentence sentence, PostQuantity feet) =>
        feet.Unit == Foot && feet.Most < MostFeet * Foot && PostNumber.One(sentence, feet.End) is { Least: < 12 } number && With(sentence, feet.End, number) is { Unit: Inch } inches
            ? feet with { End = inches.End, Least = feet.Least + inches.Least, Most = feet.Most + inches.Most, Unit = Inch }
            : null;

    // 4 inches to 6 inches, 5 inches to 7, 5 inches maybe 6
    private static PostQuantity? UpTo(PostSentence sentence, PostQuantity first)
    {
        var isBetween = sentence[first.Start - 1].Text is "between";
        var isMaybe = sentence[first.End].Text is "maybe" or "mayb" or "perhaps" or "probably";
        if (!(sentence[first.End].Text is "-" or "to" or "or" || isMaybe || (isBetween && sentence[first.End].Text is "and"))
            || PostNumber.One(sentence, first.End + 1) is not { } number
            || (isMaybe && sentence[number.Next].IsWord && UnitAt(sentence, number.Next) is null && sentence[number.Next].Text is not ("n" or "and")))
        {
            return null;
        }

        var last = With(sentence, first.End + 1, number)
            ?? (sentence[number.Next].Is(PostWord.OtherUnit | PostWord.Thing) ? null
                : new PostQuantity(first.End + 1, number.Next, number.Least * first.Unit!.Value, number.Most * first.Unit.Value, first.Unit, false));
        return last is { } end
            ? first with { End = end.End, Least = Math.Min(first.Least, end.Least), Most = Math.Max(first.Most, end.Most), IsVague = first.IsVague || isMaybe }
            : null;
    }

    private static double? UnitAt(PostSentence sentence, int at)
    {
        var token = sentence[at];
        return !token.Is(PostWord.Unit) || (token.Text == "in" && !token.IsGlued && IsPreposition(sentence, at)) ? null : token.Text switch
        {
            "mm" or "millimeter" or "millimetre" => 0.001,
            ['i', ..] => Inch,
            ['f', ..] => Foot,
            ['c', ..] => 0.01,
            ['d', ..] => 0.1,
            _ => 1,
        };
    }

    // "6 in of ice" has a unit, "6 in north bay" has none.
    private static bool IsPreposition(PostSentence sentence, int at)
    {
        var next = sentence[at + 1];
        return next.IsWord
            && !sentence.Any(at + 1, at + 4, PostWord.Ice | PostWord.Thick)
            && (next.IsCapital || next.Words == PostWord.None || next.Text is "here" or "there"
                || (next.Is(PostWord.Place | PostWord.PlaceAdj | PostWord.Det | PostWord.NotPlace | PostWord.Season | PostWord.Home) && !next.Is(PostWord.Preposition | PostWord.Hedge)));
    }
}
