namespace CrewBot.Chat.Commands;

/// <summary>Takes a text as it is.</summary>
public sealed class FreeTextReader(string accepts) : OptionReader<string>
{
    public override string Accepts => accepts;

    public override Reading<string> Read(string text, CrewUnits units) => text;
}
