namespace CrewBot.Storage.Crews;

/// <summary>What a person may do in the crew, least first.</summary>
public enum CrewRole
{
    Member,
    Steward,
    Owner,
}
