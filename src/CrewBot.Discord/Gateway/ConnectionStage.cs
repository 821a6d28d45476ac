namespace CrewBot.Discord.Gateway;

/// <summary>How far a connection has come.</summary>
internal enum ConnectionStage
{
    Connecting,
    AwaitingHello,
    Identifying,
    Resuming,
    Active,
    Ended,
}
