using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Catches;

/// <summary>Reads "this morning 9:30", "2:15 yesterday afternoon", "last night at 10": the part of the day tells which half a clock means.</summary>
/// <param name="DaysBack">Days before today.</param>
/// <param name="From">The first hour that is called so.</param>
/// <param name="To">The last.</param>
internal sealed record DayPart(int DaysBack, int From, int To)
{
    private const string At = "at ";

    // Where one ends and the next begins is common practice. After midnight nobody agrees which day's night it is: such a clock is not read.
    private static readonly Dictionary<string, DayPart> Parts = new()
    {
        ["this morning"] = new(0, 0, 11),
        ["this afternoon"] = new(0, 12, 18),
        ["this evening"] = new(0, 15, 23),
        ["tonight"] = new(0, 17, 23),
        ["yesterday morning"] = new(1, 0, 11),
        ["yesterday afternoon"] = new(1, 12, 18),
        ["yesterday evening"] = new(1, 15, 23),
        ["last night"] = new(1, 17, 23),
        ["tomorrow morning"] = new(-1, 0, 11),
        ["tomorrow afternoon"] = new(-1, 12, 18),
        ["tomorrow evening"] = new(-1, 15, 23),
    };

    /// <summary>The time that is meant; null where no part of a day is named, or the clock is not of that part.</summary>
    /// <param name="said">In lower case, words one space apart.</param>
    public static Moment? Read(string said)
    {
        foreach (var (name, part) in Parts)
        {
            if (Without(said, name) is { } clock)
            {
                return part.ClockOf(clock) is { } time ? new Moment(null, part.DaysBack, null, time) : null;
            }
        }

        return null;
    }

    private static string? Without(string said, string part) =>
        said.StartsWith($"{part} ", StringComparison.Ordinal) ? said[(part.Length + 1)..]
        : said.EndsWith($" {part}", StringComparison.Ordinal) ? said[..^(part.Length + 1)]
        : null;

    // Of "2:15", "2:15am" and "2:15pm" the one that lies in this part. A bare number needs its "at": "perch 8 this morning" may be a length.
    private TimeOnly? ClockOf(string said)
    {
        var clock = said.StartsWith(At, StringComparison.Ordinal) ? said[At.Length..] : said;
        if (clock.All(char.IsAsciiDigit) && clock == said)
        {
            return null;
        }

        foreach (var half in (string[])["", "am", "pm"])
        {
            if (ClockText.EndOf($"{clock}{half}".Split(' ')) is ([], var time) && time.Hour >= From && time.Hour <= To)
            {
                return time;
            }
        }

        return null;
    }
}
