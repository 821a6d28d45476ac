namespace CrewBot.Chat.Commands;

/// <summary>Takes a name: up to 60 characters in one line.</summary>
public sealed class NameReader(string accepts) : OptionReader<string>
{
    private const int Longest = 60;

    public override string Accepts => accepts;

    public override Reading<string> Read(string text, CrewUnits units)
    {
        var name = string.Join(' ', text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        return name.Length <= Longest ? name : new Misread($"{name.Length} characters is too long: at most {Longest}.");
    }
}
