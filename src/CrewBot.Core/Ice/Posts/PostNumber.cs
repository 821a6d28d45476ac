namespace CrewBot.Core.Ice.Posts;

/// <summary>A number, a range or the numbers of several holes at one place of a sentence.</summary>
/// <param name="Least">The lowest.</param>
/// <param name="Most">The highest.</param>
/// <param name="Next">Where the sentence goes on.</param>
/// <param name="IsVague">Whether the word itself is vague: a couple.</param>
internal readonly record struct PostNumber(double Least, double Most, int Next, bool IsVague = false)
{
    // Nobody drills more holes than that for one post.
    private const int MostInAList = 40;

    private const int MostFillers = 3;

    private static readonly Dictionary<string, double> Words = new()
    {
        ["zero"] = 0,
        ["one"] = 1,
        ["two"] = 2,
        ["three"] = 3,
        ["four"] = 4,
        ["five"] = 5,
        ["six"] = 6,
        ["seven"] = 7,
        ["eight"] = 8,
        ["nine"] = 9,
        ["ten"] = 10,
        ["eleven"] = 11,
        ["twelve"] = 12,
        ["dozen"] = 12,
        ["thirteen"] = 13,
        ["fourteen"] = 14,
        ["fifteen"] = 15,
        ["sixteen"] = 16,
        ["seventeen"] = 17,
        ["eighteen"] = 18,
        ["nineteen"] = 19,
        ["twenty"] = 20,
        ["thirty"] = 30,
        ["forty"] = 40,
        ["fifty"] = 50,
        ["sixty"] = 60,
    };

    /// <summary>Reads at a place; null when no number stands there.</summary>
    public static PostNumber? At(PostSentence sentence, int at)
    {
        if (One(sentence, at) is not { } number)
        {
            return null;
        }

        for (var count = 1; count < MostInAList && Joined(sentence, at, number.Next) is { } more; count++)
        {
            number = new(Math.Min(number.Least, more.Least), Math.Max(number.Most, more.Most), more.Next, number.IsVague || more.IsVague);
        }

        return number;
    }

    /// <summary>Reads one number, without what a range or a list adds to it.</summary>
    public static PostNumber? One(PostSentence sentence, int at)
    {
        var token = sentence[at];
        if (token.Number is { } digits)
        {
            return token.IsPart ? new(digits, digits, at + 1) : WithPart(sentence, at + 1, digits, token.Most);
        }

        if (Words.TryGetValue(token.Text, out var word))
        {
            var tens = word >= 20 && Words.TryGetValue(sentence[at + 1].Text, out var ones) && ones is > 0 and < 10 ? ones : 0;
            return WithPart(sentence, at + (tens > 0 ? 2 : 1), word + tens, word + tens);
        }

        return token.Text switch
        {
            "a" or "an" => AfterArticle(sentence, at + 1),
            "couple" => new(2, 2, Skip(sentence, at + 1, "of"), true),
            "half" => BeforeUnit(sentence, at + 1, 1 / 2d),
            "quarter" => BeforeUnit(sentence, at + 1, 1 / 4d),
            "inch" or "foot" when token.IsWord && HalfAt(sentence, at + 1) is not null && sentence[at - 1].Number is null => new(1, 1, at),
            "foot" when token.IsWord && !sentence[at - 1].IsWord && sentence[at - 1].Number is null && sentence[at + 1].Text is "of" or "plus" or "+" => new(1, 1, at),
            _ => null,
        };
    }

    /// <summary>Reads "and a half" or "and 1/4"; null when the sentence goes on differently.</summary>
    public static PostNumber? HalfAt(PostSentence sentence, int at)
    {
        if (sentence[at].Text is not ("and" or "&" or "n"))
        {
            return null;
        }

        var part = Skip(sentence, at + 1, "a", "one");
        if (Words.TryGetValue(sentence[at + 1].Text, out var count) && PartNamed(sentence[sentence[at + 2].Text is "-" ? at + 3 : at + 2].Text) is { } each && count * each < 1)
        {
            return new(count * each, count * each, sentence[at + 2].Text is "-" ? at + 4 : at + 3); // three and three quarters
        }

        return sentence[part].Text is "half" ? new(1 / 2d, 1 / 2d, part + 1)
            : sentence[part].Text is "quarter" ? new(1 / 4d, 1 / 4d, part + 1)
            : sentence[part] is { IsPart: true, Number: { } number } ? new(number, number, part + 1)
            : null;
    }

    private static PostNumber WithPart(PostSentence sentence, int next, double least, double most)
    {
        if (PartNamed(sentence[next].Text) is { } each and < 0.5)
        {
            return new(least * each, most * each, Skip(sentence, next + 1, "of", "a", "an"));
        }

        var part = sentence[next].Text == "-" && sentence[next].IsGlued ? next + 1 : next;
        return sentence[part] is { IsPart: true, Number: { } value } ? new(least + value, most + value, part + 1)
            : HalfAt(sentence, next) is { } half ? new(least + half.Least, most + half.Least, half.Next)
            : new(least, most, next);
    }

    private static double? PartNamed(string word) => word switch
    {
        "half" => 1 / 2d,
        "quarter" or "quarters" => 1 / 4d,
        "eighth" or "eighths" => 1 / 8d,
        _ => null,
    };

    private static PostNumber? AfterArticle(PostSentence sentence, int at) => sentence[at].Text switch
    {
        "couple" or "dozen" or "half" or "quarter" => One(sentence, at),
        _ => BeforeUnit(sentence, sentence[at].Text is "good" or "solid" or "full" or "bare" ? at + 1 : at, 1),
    };

    // "A foot", "half an inch": a number only where a unit follows.
    private static PostNumber? BeforeUnit(PostSentence sentence, int at, double value)
    {
        var next = Skip(sentence, at, "of", "a", "an");
        return sentence[next].IsWord && sentence[next].Is(PostWord.Unit) && sentence[next].Text is not ("in" or "m") ? new(value, value, next) : null;
    }

    private static PostNumber? Joined(PostSentence sentence, int start, int next)
    {
        var isTime = sentence[start - 1].Text is "at" or "@" || sentence.IsClockAt(start - 1);
        var from = sentence[next].Text switch
        {
            "-" or "to" or "or" or "/" => next + 1,
            "and" or "&" => next + 1,
            "," when !isTime => sentence[next + 1].Text is "and" or "or" ? next + 2 : next + 1,
            _ when sentence[next].Number is not null && !sentence[next].IsGlued && !isTime && sentence[next - 1].Number is not null => next,
            _ when sentence[next].Is(PostWord.Hedge) && sentence[next].IsWord => next,
            _ => -1,
        };
        if (from < 0)
        {
            return null;
        }

        from = sentence[from].Is(PostWord.Hedge) ? from + 1 : from;
        return sentence[from].Text is "a" or "an" or "half" or "inch" or "foot" ? null : One(sentence, from);
    }

    // "Half of a" has two; a row of a hundred is no number.
    private static int Skip(PostSentence sentence, int at, params ReadOnlySpan<string> words)
    {
        var last = at + MostFillers;
        while (at < last && words.Contains(sentence[at].Text))
        {
            at++;
        }

        return at;
    }
}
