namespace CrewBot.Chat.Commands;

/// <summary>Reads one of a few fixed words.</summary>
/// <typeparam name="T">What the words stand for.</typeparam>
public sealed class ChoiceReader<T> : OptionReader<T>
{
    private readonly Dictionary<string, T> _words = new(StringComparer.OrdinalIgnoreCase);

    /// <param name="choices">Each word shown and what it stands for.</param>
    /// <param name="alsoReads">Other words that people use for the same.</param>
    public ChoiceReader(IReadOnlyList<(string Word, T Value)> choices, params IReadOnlyList<(string Word, T Value)> alsoReads)
    {
        Choices = [.. choices.Select(choice => choice.Word)];
        foreach (var (word, value) in choices.Concat(alsoReads))
        {
            _words.Add(word, value);
        }
    }

    public override IReadOnlyList<string> Choices { get; }

    /// <summary>Every word that is read.</summary>
    public IEnumerable<string> Words => _words.Keys;

    public override string Accepts => string.Join(", ", Choices.SkipLast(1)) + (Choices.Count > 1 ? " or " : "") + Choices[^1];

    public override Reading<T> Read(string text, CrewUnits units) =>
        _words.TryGetValue(text, out var value)
            ? value
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
}
