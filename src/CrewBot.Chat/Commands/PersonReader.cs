namespace CrewBot.Chat.Commands;

/// <summary>Reads who is meant. Platforms offer their people, and a mention reads too; in the terminal a person goes by the name they come in with.</summary>
public sealed class PersonReader : OptionReader<Person>
{
    private const int Longest = 64;

    public override OptionKind Kind => OptionKind.Person;

    public override string Accepts => "somebody of the crew, such as @ana";

    public override Reading<Person> Read(string text, CrewUnits units) => IdOf(text) is { Length: > 0 and <= Longest } id
        ? new Person(id) { IsMentioned = text.StartsWith("<@", StringComparison.Ordinal) }
        : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");

    /// <summary>The id in a mention; what is none is as it was.</summary>
    internal static string IdOf(string text) => text.Trim('<', '@', '!', '>', ' ');
}
