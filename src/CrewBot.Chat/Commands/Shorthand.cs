namespace CrewBot.Chat.Commands;

/// <summary>Reads a few words in any order as options of a command.</summary>
public abstract class Shorthand
{
    /// <summary>The option that holds the words.</summary>
    public abstract CommandOption<string> Words { get; }

    /// <summary>Turns words into options; what it can't place it names rather than guesses.</summary>
    /// <param name="words">As written.</param>
    /// <param name="caller">Whose units and waters they are said in.</param>
    /// <param name="named">The options that are given beside the words, by name or by the message that they stand in.</param>
    public abstract Expansion Expand(string words, Caller caller, IEnumerable<string> named);
}
