namespace CrewBot.Core.Ice.Posts;

/// <summary>Reads when something was so. Of a part of a day it takes the beginning: a report is never younger than said.</summary>
internal static class PostTimes
{
    private static readonly string[] Weekdays = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"];

    /// <summary>The time that a clause says; null when it says none.</summary>
    public static PostedTime? In(PostSentence sentence, PostClause clause, DateTimeOffset posted)
    {
        PostedTime? day = null;
        for (var at = clause.Start; at < clause.End; at++)
        {
            if ((Ago(sentence, at, posted) ?? Clock(sentence, at, clause, posted)) is { } time)
            {
                return time;
            }

            day ??= Day(sentence, at, posted);
        }

        return day;
    }

    // 10 min ago, an hour ago, two days ago, last week
    private static PostedTime? Ago(PostSentence sentence, int at, DateTimeOffset posted)
    {
        if (sentence[at].Text is not ("ago" or "back" or "earlier") || at < 2)
        {
            return null;
        }

        var unit = sentence[at - 1].Text;
        var number = sentence[at - 3].Text is "half" ? 0.5
            : sentence[at - 2].Text is "a" or "an" or "one" ? 1 : sentence[at - 2].Text is "few" ? 3 : NumberBefore(sentence, at - 1);
        return number is not { } count || count > 400 ? null : unit switch
        {
            "min" or "minute" or "mins" => new(posted.AddMinutes(-count), true),
            "hr" or "hour" => new(posted.AddHours(-count), true),
            "day" => new(Midnight(posted).AddDays(-count), false),
            "week" => new(Midnight(posted).AddDays(-7 * count), false),
            "night" => new(Midnight(posted).AddDays(-count), false),
            _ => null,
        };
    }

    private static double? NumberBefore(PostSentence sentence, int at)
    {
        for (var start = Math.Max(0, at - 4); start < at; start++)
        {
            if (PostNumber.One(sentence, start) is { } number && number.Next == at)
            {
                return number.Most;
            }
        }

        return null;
    }

    // 7am, 7:30, 7:30 pm, noon, at ten last night
    private static PostedTime? Clock(PostSentence sentence, int at, PostClause clause, DateTimeOffset posted)
    {
        if (sentence[at].Text is "noon")
        {
            return LastAt(12, 0, sentence, clause, posted);
        }

        if (PostNumber.One(sentence, at) is not { Most: <= 24 } number || number.Next != at + 1 || number.Most != Math.Floor(number.Most))
        {
            return null;
        }

        var hour = number.Most;
        var hasMinutes = sentence.IsClockAt(at + 1);
        var half = HalfOf(sentence, hasMinutes ? at + 3 : at + 1, sentence[at - 1], clause);
        if (half is null && !hasMinutes)
        {
            return null;
        }

        var hours = half is 'p' && hour < 12 ? hour + 12 : half is 'a' && hour == 12 ? 0 : hour % 24;
        return LastAt((int)hours, hasMinutes ? (int)sentence[at + 2].Number!.Value : 0, sentence, clause, posted);
    }

    // The half of the day: said behind the hour, or by the part of the day that "at ten" stands in.
    private static char? HalfOf(PostSentence sentence, int at, PostToken before, PostClause clause)
    {
        if (sentence[at].Text is "am" or "pm" or "a.m" or "p.m" or "o'clock")
        {
            return sentence[at].Text[0];
        }

        if (before.Text is not ("at" or "@" or "around" or "about") || sentence[at].Is(PostWord.Unit | PostWord.OtherUnit | PostWord.Thing | PostWord.Ice | PostWord.Kind))
        {
            return null;
        }

        return Says(sentence, clause, "night", "nite", "tonight", "tonite", "evening", "afternoon", "aft", "arvo") ? 'p'
            : Says(sentence, clause, "morning", "mornin", "morn") ? 'a'
            : null;
    }

    private static bool Says(PostSentence sentence, PostClause clause, params ReadOnlySpan<string> words)
    {
        for (var at = clause.Start; at < clause.End; at++)
        {
            if (words.Contains(sentence[at].Text))
            {
                return true;
            }
        }

        return false;
    }

    // On the day that is said beside it; without one, the last time that the clock stood there.
    private static PostedTime LastAt(int hour, int minute, PostSentence sentence, PostClause clause, DateTimeOffset posted)
    {
        for (var at = clause.Start; at < clause.End; at++)
        {
            if (Day(sentence, at, posted) is { } day)
            {
                var said = Midnight(day.At).AddHours(hour).AddMinutes(minute);
                return new(said > posted ? said.AddDays(-1) : said, true);
            }
        }

        var time = Midnight(posted).AddHours(hour).AddMinutes(minute);
        return new(time > posted ? time.AddDays(-1) : time, true);
    }

    private static PostedTime? Day(PostSentence sentence, int at, DateTimeOffset posted)
    {
        var (token, before, today) = (sentence[at], sentence[at - 1], Midnight(posted));
        if (token.Is(PostWord.Day) && token.Text.Length >= 3 && before.Text is not ("by" or "next" or "until"))
        {
            var weekday = Array.IndexOf(Weekdays, token.Text[..3]);
            return new(today.AddDays(-(((int)posted.DayOfWeek - weekday + 7) % 7) - (before.Text is "last" && weekday == (int)posted.DayOfWeek ? 7 : 0)), false);
        }

        return (before.Text, token.Text) switch
        {
            (_, "yesterday") => new(today.AddDays(before.Text is "before" ? -2 : -1), false),
            ("last", "night" or "evening") => new(today.AddHours(-6), false),
            ("last", "week" or "weekend") => new(today.AddDays(-7), false),
            ("last", "nite") => new(today.AddHours(-6), false),
            ("this", "morning" or "mornin" or "morn" or "am" or "afternoon" or "aft" or "arvo" or "evening" or "pm") => new(today, false),
            (_, "rn" or "atm") or ("right", "now") => new(today, false),
            (not "by", "today" or "tonight" or "tonite") => new(today, false),
            _ => null,
        };
    }

    private static DateTimeOffset Midnight(DateTimeOffset posted) => new(posted.Date, posted.Offset);
}
