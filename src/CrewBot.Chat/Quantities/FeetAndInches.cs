namespace CrewBot.Chat.Quantities;

/// <summary>Reads one length that is written in two units: 5ft 6in, 5'6", 5 feet 6.</summary>
internal static class FeetAndInches
{
    private const int MostWords = 4;
    private const double InchesInAFoot = 12;

    private static readonly char[] FootMarks = ['f', 'F', '\'', '′', '’'];

    private static UnitWord Foot { get; } = UnitWord.Find("ft")!;

    private static UnitWord Inch { get; } = UnitWord.Find("in")!;

    /// <summary>The length in metres; null when the text is none in feet and inches.</summary>
    public static double? Read(string text) => Split(text) is { } split ? Foot.ToBase(split.Feet) + Inch.ToBase(split.Inches) : null;

    /// <summary>How many words from here are one such length, as it is said in a row of words; null when none are.</summary>
    public static (int Words, double Feet)? At(string[] said, int at)
    {
        for (var count = Math.Min(MostWords, said.Length - at); count >= 1; count--)
        {
            var words = said[at..(at + count)];
            // "24ft 2 lines" is no 24 feet and 2 inches: apart from its feet, the inch is said.
            if (Split(string.Join(' ', words)) is { Inches: < InchesInAFoot } split && (count == 1 || split.SaysInch))
            {
                return (count, split.Feet);
            }
        }

        return null;
    }

    private static (double Feet, double Inches, bool SaysInch)? Split(string text)
    {
        var cut = text.IndexOfAny(FootMarks);
        if (cut < 0)
        {
            return null;
        }

        var inchesFrom = cut + text[cut..].TakeWhile(character => !char.IsDigit(character)).Count();
        return NumberText.Split(text[..inchesFrom]) is { IsAmbiguous: false } feet
            && UnitWord.Find(feet.After) == Foot
            && NumberText.Split(text[inchesFrom..]) is { IsAmbiguous: false } inches
            && (inches.After.Length == 0 || UnitWord.Find(inches.After) == Inch)
            ? (feet.Number, inches.Number, inches.After.Length > 0)
            : null;
    }
}
