namespace CrewBot.Discord.Gateway;

/// <summary>What each close code means: the one table of it. Codes that nobody has published yet mean "resume".</summary>
internal static class CloseCodes
{
    /// <summary>Ours, on leaving: unlike 1000 and 1001 it keeps the session resumable.</summary>
    public const int KeepSession = 4000;

    private static readonly TimeSpan PauseAfterFlood = TimeSpan.FromSeconds(5);

    public static ConnectionEnd Read(int? code) => code switch
    {
        null => Resume("the connection broke"),
        4001 => Resume("close code 4001: the gateway did not know an operation that was sent"),
        4002 => Resume("close code 4002: the gateway could not read a frame that was sent"),
        4003 => Identify("close code 4003: the session is no longer authenticated"),
        4004 => GiveUp(
            "The platform refused the bot token (close code 4004). Copy a fresh token from the developer portal " +
            "into the configuration and start again."),
        4005 => Resume("close code 4005: identified twice"),
        4007 => Identify("close code 4007: the sequence to resume from was refused"),
        4008 => Resume("close code 4008: frames were sent too fast", PauseAfterFlood),
        4009 => Identify("close code 4009: the session timed out"),
        4010 => GiveUp(
            "The shard was refused (close code 4010). Make every configured shard id lower than the shard count."),
        4011 => GiveUp(
            "The bot serves too many crews for its shards (close code 4011). Raise the shard count, or leave it out " +
            "to follow the gateway's advice."),
        4012 => GiveUp(
            "The gateway no longer speaks version 10 (close code 4012). Update CrewBot."),
        4013 or 4014 => GiveUp(
            $"The gateway refused the intents (close code {code}). CrewBot asks for direct messages alone: check that the API base " +
            "address is the right server, then update CrewBot."),
        _ => Resume($"close code {code}"),
    };

    private static ConnectionEnd Resume(string reason, TimeSpan pause = default) => new(NextStep.Resume, reason, pause);

    private static ConnectionEnd Identify(string reason) => new(NextStep.Identify, reason);

    private static ConnectionEnd GiveUp(string remedy) => new(NextStep.GiveUp, remedy);
}
