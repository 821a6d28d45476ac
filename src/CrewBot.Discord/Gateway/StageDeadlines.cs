namespace CrewBot.Discord.Gateway;

/// <summary>How long a connection may stay in each stage: none of them may hang for ever.</summary>
internal static class StageDeadlines
{
    public static TimeSpan Of(ConnectionStage stage) => stage switch
    {
        ConnectionStage.Connecting => TimeSpan.FromSeconds(10),
        ConnectionStage.AwaitingHello => TimeSpan.FromSeconds(20),
        ConnectionStage.Identifying => TimeSpan.FromSeconds(30),
        ConnectionStage.Resuming => TimeSpan.FromSeconds(60),
        ConnectionStage.Active => Timeout.InfiniteTimeSpan, // the heartbeat watches it
        _ => TimeSpan.FromSeconds(1), // for the other end to close as well
    };
}
