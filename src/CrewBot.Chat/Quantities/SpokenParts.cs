namespace CrewBot.Chat.Quantities;

/// <summary>A short text taken apart into its quantities and the words between: "8 lb fluorocarbon 24in".</summary>
/// <param name="Quantities">Each quantity as written, with its unit.</param>
/// <param name="Words">What is left, in order.</param>
internal sealed record SpokenParts(IReadOnlyList<(string Text, UnitWord Unit)> Quantities, IReadOnlyList<string> Words)
{
    public static SpokenParts Of(string text)
    {
        var said = SaidWords.Of(text);
        var quantities = new List<(string, UnitWord)>();
        var words = new List<string>();
        for (var at = 0; at < said.Length;)
        {
            var count = QuantityAt(said, at, out var unit);
            if (count > 0)
            {
                quantities.Add((string.Join(' ', said[at..(at + count)]), unit!));
            }
            else
            {
                words.Add(said[at]);
            }

            at += Math.Max(1, count);
        }

        return new SpokenParts(quantities, words);
    }

    private static int QuantityAt(string[] said, int at, out UnitWord? unit)
    {
        for (var count = Math.Min(3, said.Length - at); count >= 1; count--)
        {
            if (NumberText.Split(string.Join(' ', said[at..(at + count)])) is { } split
                && (unit = UnitWord.Find(split.After)) is not null)
            {
                return count;
            }
        }

        unit = null;
        return 0;
    }
}
