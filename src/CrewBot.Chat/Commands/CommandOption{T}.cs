namespace CrewBot.Chat.Commands;

/// <summary>An option whose value is read as one type.</summary>
/// <typeparam name="T">What it holds.</typeparam>
/// <param name="Name">Lower case, words joined by hyphens.</param>
/// <param name="Description">What it is, in at most 100 characters.</param>
/// <param name="IsRequired">Whether the command can't do without it.</param>
/// <param name="Reader">Reads it.</param>
public sealed record CommandOption<T>(string Name, string Description, bool IsRequired, OptionReader<T> Reader)
    : CommandOption(Name, Description, IsRequired)
{
    public override OptionKind Kind => Reader.Kind;

    public override string Accepts => Reader.Accepts;

    public override string AcceptedFrom(Caller caller) => Reader.AcceptedFrom(caller);

    public override int MostCharacters => Reader.MostCharacters;

    public override IReadOnlyList<string> Choices => Reader.Choices;

    public override bool CanSuggest => Reader.CanSuggest;

    public override IEnumerable<string> Suggest(string begun) => Reader.Suggest(begun);

    public override IEnumerable<string> Suggest(string begun, Caller caller) => Reader.Suggest(begun, caller);

    internal override Reading<object> ReadAny(string text, Caller caller)
    {
        var reading = Reader.Read(text, caller);
        return reading.Fault is { } fault ? new Misread($"{Name}: {fault}") : reading.Value!;
    }
}
