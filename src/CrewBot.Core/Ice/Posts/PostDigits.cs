namespace CrewBot.Core.Ice.Posts;

/// <summary>Reads what starts with a digit: 4, 4.5, 12,5, 1,000, 3/4, 10th, 4x4, 2day.</summary>
internal static class PostDigits
{
    private static readonly Dictionary<string, string> Texted = new()
    {
        ["day"] = "today",
        ["nite"] = "tonight",
        ["night"] = "tonight",
        ["morrow"] = "tomorrow",
        ["moro"] = "tomorrow",
    };

    /// <summary>Reads it and moves on behind it.</summary>
    public static PostToken Read(PostCursor cursor)
    {
        var (start, glued) = (cursor.At, cursor.IsGlued);
        if (TextedDay(cursor) is { } day)
        {
            var (stem, classes) = PostLexicon.Find(day);
            return new(cursor.Since(start), stem, classes, glued);
        }

        var whole = Digits(cursor);
        if (cursor.Here == '/' && Part(cursor, whole) is { } part)
        {
            return Number(cursor, start, glued, part, part) with { IsPart = true };
        }

        if (IsOrdinal(cursor))
        {
            while (char.IsLetterOrDigit(cursor.Here))
            {
                cursor.At++;
            }

            return new(cursor.Since(start), "th", PostWord.OtherUnit, glued);
        }

        var (least, most) = Decimals(cursor, start, whole);
        return Number(cursor, start, glued, least, most);
    }

    /// <summary>The value of a sign that is a part of one.</summary>
    public static double? PartOf(char sign) => sign switch
    {
        '½' => 1 / 2d,
        '¼' => 1 / 4d,
        '¾' => 3 / 4d,
        '⅓' => 1 / 3d,
        '⅔' => 2 / 3d,
        '⅛' => 1 / 8d,
        '⅜' => 3 / 8d,
        '⅝' => 5 / 8d,
        '⅞' => 7 / 8d,
        _ => null,
    };

    private static PostToken Number(PostCursor cursor, int start, bool glued, double least, double most) =>
        new(cursor.Since(start), cursor.Since(start), PostWord.None, glued) { Number = least, Most = most };

    private static string? TextedDay(PostCursor cursor)
    {
        if (cursor.Here != '2' || !char.IsLetter(cursor.Peek(1)))
        {
            return null;
        }

        var length = 0;
        while (char.IsLetter(cursor.Peek(1 + length)))
        {
            length++;
        }

        if (!Texted.TryGetValue(cursor.Text.Substring(cursor.At + 1, length).ToLowerInvariant(), out var day))
        {
            return null;
        }

        cursor.At += 1 + length;
        return day;
    }

    // A decimal comma may part thousands, decimals or a list: of 4,5 no less than 4 is sure.
    private static (double Least, double Most) Decimals(PostCursor cursor, int start, double whole)
    {
        if (cursor.Here == '.' && char.IsAsciiDigit(cursor.Peek(1)))
        {
            cursor.At++;
            cursor.At += cursor.Run();
            var number = cursor.Parse(start, cursor.At);
            return (number, number);
        }

        var run = cursor.Here == ',' ? cursor.Run(1) : 0;
        if (run == 3)
        {
            cursor.At += 4;
            var number = (whole * 1000) + cursor.Parse(cursor.At - 3, cursor.At);
            return (number, number);
        }

        if (run is 1 or 2 && cursor.Peek(run + 1) != ',' && !(whole < 10 && run == 2))
        {
            var most = whole + (cursor.Parse(cursor.At + 1, cursor.At + 1 + run) / Math.Pow(10, run));
            cursor.At += run + 1;
            return (whole, most);
        }

        return (whole, whole);
    }

    private static bool IsOrdinal(PostCursor cursor) =>
        char.ToLowerInvariant(cursor.Here) is 's' or 'n' or 'r' or 't' or 'x'
        && (char.IsLetter(cursor.Peek(1)) || char.IsAsciiDigit(cursor.Peek(1)))
        && char.ToLowerInvariant(cursor.Peek(1)) is 't' or 'd' or 'h' or >= '0' and <= '9'
        && !char.IsLetter(cursor.Peek(2));

    // 3/4 is three quarters; 4/5 is how people write a range.
    private static double? Part(PostCursor cursor, double above)
    {
        var start = cursor.At;
        cursor.At++;
        var below = char.IsAsciiDigit(cursor.Here) ? Digits(cursor) : 0;
        if (below is 2 or 3 or 4 or 8 or 16 && above < below && above > 0 && cursor.Here != '/')
        {
            return above / below;
        }

        cursor.At = start;
        return null;
    }

    private static double Digits(PostCursor cursor)
    {
        var start = cursor.At;
        cursor.At += cursor.Run();
        return start == cursor.At ? 0 : cursor.Parse(start, cursor.At);
    }
}
