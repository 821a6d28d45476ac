namespace CrewBot.Chat.Commands;

/// <summary>An option of a command, declared once: registration, parsing, suggestions, help and docs all come from here.</summary>
/// <param name="Name">Lower case, words joined by hyphens.</param>
/// <param name="Description">What it is, in at most 100 characters.</param>
/// <param name="IsRequired">Whether the command can't do without it.</param>
public abstract record CommandOption(string Name, string Description, bool IsRequired)
{
    /// <summary>What a person gives for it.</summary>
    public abstract OptionKind Kind { get; }

    /// <summary>What is accepted, with an example.</summary>
    public abstract string Accepts { get; }

    /// <summary>The same for this caller.</summary>
    public abstract string AcceptedFrom(Caller caller);

    /// <summary>How many characters it may have.</summary>
    public abstract int MostCharacters { get; }

    /// <summary>All values there are, when they are few and fixed; otherwise empty.</summary>
    public abstract IReadOnlyList<string> Choices { get; }

    /// <summary>Whether anything can be offered while it is being written.</summary>
    public abstract bool CanSuggest { get; }

    /// <summary>What could be meant by a text that is still being written, best first.</summary>
    public abstract IEnumerable<string> Suggest(string begun);

    /// <summary>What this caller could mean by it, best first.</summary>
    public abstract IEnumerable<string> Suggest(string begun, Caller caller);

    internal abstract Reading<object> ReadAny(string text, Caller caller);

    /// <summary>Declares an option that the command can't do without.</summary>
    public static CommandOption<T> Required<T>(string name, string description, OptionReader<T> reader) =>
        new(name, description, true, reader);

    /// <summary>Declares an option that has a default.</summary>
    public static CommandOption<T> Optional<T>(string name, string description, OptionReader<T> reader) =>
        new(name, description, false, reader);
}
