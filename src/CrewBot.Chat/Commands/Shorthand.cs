namespace CrewBot.Chat.Commands;

/// <summary>Reads a few words in any order as options of a command.</summary>
public abstract class Shorthand
{
    /// <summary>The option that holds the words.</summary>
    public abstract CommandOption<string> Words { get; }

    /// <summary>Turns words into options; what it can't place it names rather than guesses.</summary>
    public abstract Expansion Expand(string words, Caller caller);
}
