namespace CrewBot.Chat.Commands;

/// <summary>What a person may do in their crew, least first.</summary>
public enum Role
{
    Member,

    /// <summary>Runs trips and derbies.</summary>
    Steward,

    /// <summary>Sets the crew up.</summary>
    Owner,
}
