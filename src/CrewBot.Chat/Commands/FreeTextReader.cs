namespace CrewBot.Chat.Commands;

/// <summary>Takes a text as it is.</summary>
/// <param name="accepts">What it is, with an example.</param>
/// <param name="longest">How many characters it may have.</param>
public sealed class FreeTextReader(string accepts, int longest = CommandText.Longest) : OptionReader<string>
{
    public override string Accepts => accepts;

    public override int MostCharacters => longest;

    public override Reading<string> Read(string text, CrewUnits units) => text;
}
