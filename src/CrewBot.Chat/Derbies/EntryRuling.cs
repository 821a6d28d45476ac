namespace CrewBot.Chat.Derbies;

/// <summary>What a steward does about an entry that waits.</summary>
public enum EntryRuling
{
    Accept,
    Refuse,

    /// <summary>Asks the crew who saw it.</summary>
    Ask,
}
