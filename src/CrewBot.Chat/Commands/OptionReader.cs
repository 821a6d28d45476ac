namespace CrewBot.Chat.Commands;

/// <summary>Reads what a person wrote for an option, and offers what they might write.</summary>
/// <typeparam name="T">What the option holds.</typeparam>
public abstract class OptionReader<T>
{
    /// <summary>What a person gives.</summary>
    public virtual OptionKind Kind => OptionKind.Words;

    /// <summary>What is accepted, with an example, as the end of "Give …": "feet or metres, such as 24ft".</summary>
    public abstract string Accepts { get; }

    /// <summary>The same for this caller, where it depends on their crew.</summary>
    public virtual string AcceptedFrom(Caller caller) => Accepts;

    /// <summary>All values there are, when they are few and fixed; otherwise empty.</summary>
    public virtual IReadOnlyList<string> Choices => [];

    /// <summary>Whether anything can be offered while it is being written, to some caller at least.</summary>
    public virtual bool CanSuggest => Suggest("").Any();

    /// <summary>How many characters it may have; a platform's whole message is longer than what people type.</summary>
    public virtual int MostCharacters => CommandText.Longest;

    /// <summary>Reads a text that is neither empty nor longer than a command may be.</summary>
    /// <param name="text">As written, trimmed.</param>
    /// <param name="units">What a bare number means.</param>
    public abstract Reading<T> Read(string text, CrewUnits units);

    /// <summary>Reads a text as this caller means it, where that depends on more than their units.</summary>
    public virtual Reading<T> Read(string text, Caller caller) => Read(text, caller.Units);

    /// <summary>What could be meant by a text that is still being written, best first.</summary>
    public virtual IEnumerable<string> Suggest(string begun) =>
        Choices.Where(choice => choice.StartsWith(begun, StringComparison.OrdinalIgnoreCase));

    /// <summary>What this caller could mean by it, where that depends on their crew.</summary>
    public virtual IEnumerable<string> Suggest(string begun, Caller caller) => Suggest(begun);
}
