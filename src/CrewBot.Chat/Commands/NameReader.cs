namespace CrewBot.Chat.Commands;

/// <summary>Takes a name: up to 60 characters in one line, unless told otherwise.</summary>
public sealed class NameReader(string accepts, int longest = 60) : OptionReader<string>
{
    public override string Accepts => accepts;

    public override Reading<string> Read(string text, CrewUnits units)
    {
        var name = string.Join(' ', text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        return name.Length <= longest ? name : new Misread($"{name.Length} characters is too long: at most {longest}.");
    }
}
