namespace CrewBot.Chat.Commands;

/// <summary>Reads which role of the chat is meant, by the platform's own id. Platforms offer their roles; a mention reads too.</summary>
public sealed class RoleReader : OptionReader<string>
{
    private const int Longest = 60;

    public override OptionKind Kind => OptionKind.Role;

    public override string Accepts => "a role, such as @shore-contacts";

    public override Reading<string> Read(string text, CrewUnits units) =>
        text.Trim('<', '@', '&', '>', ' ') is { Length: > 0 and <= Longest } id ? id : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
}
