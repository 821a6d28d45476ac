namespace CrewBot.Chat.Quantities;

/// <summary>Reads one quantity that is written in two units: 5ft 6in, 5'6", 5 feet 6; 8 lb 3 oz, 8lb3.</summary>
internal sealed class TwoUnits
{
    private const int MostWords = 4;

    private readonly UnitWord _large;
    private readonly UnitWord _small;
    private readonly char[] _marks;

    /// <param name="large">The unit that comes first.</param>
    /// <param name="small">The unit of the rest.</param>
    /// <param name="marks">What the large unit's spellings begin with.</param>
    private TwoUnits(string large, string small, params char[] marks) =>
        (_large, _small, _marks) = (UnitWord.Find(large)!, UnitWord.Find(small)!, marks);

    public static TwoUnits FeetAndInches { get; } = new("ft", "in", 'f', 'F', '\'', '′', '’');

    public static TwoUnits PoundsAndOunces { get; } = new("lb", "oz", 'l', 'L', 'p', 'P', '#');

    /// <summary>The one that a quantity of a dimension may be written in; null where there is none.</summary>
    public static TwoUnits? For(Dimension dimension) => dimension switch
    {
        Dimension.Length => FeetAndInches,
        Dimension.Weight => PoundsAndOunces,
        _ => null,
    };

    /// <summary>The quantity in base units; null when the text is none in both units.</summary>
    public double? Read(string text) => Split(text) is { } split ? _large.ToBase(split.Large) + _small.ToBase(split.Small) : null;

    /// <summary>How many words from here are one such quantity, as it is said in a row of words; null when none are.</summary>
    public (int Words, double Large)? At(string[] said, int at)
    {
        for (var count = Math.Min(MostWords, said.Length - at); count >= 1; count--)
        {
            var words = said[at..(at + count)];
            // "24ft 2 lines" is no 24 feet and 2 inches: apart from the large unit, the small one is said.
            if (Split(string.Join(' ', words)) is { } split && _small.ToBase(split.Small) < _large.ToBase(1) && (count == 1 || split.SaysSmall))
            {
                return (count, split.Large);
            }
        }

        return null;
    }

    private (double Large, double Small, bool SaysSmall)? Split(string text)
    {
        var cut = text.IndexOfAny(_marks);
        if (cut < 0)
        {
            return null;
        }

        var smallFrom = cut + text[cut..].TakeWhile(character => !char.IsDigit(character)).Count();
        return NumberText.Split(text[..smallFrom]) is { IsAmbiguous: false } large
            && UnitWord.Find(large.After) == _large
            && NumberText.Split(text[smallFrom..]) is { IsAmbiguous: false } small
            && (small.After.Length == 0 || UnitWord.Find(small.After) == _small)
            ? (large.Number, small.Number, small.After.Length > 0)
            : null;
    }
}
