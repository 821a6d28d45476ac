namespace CrewBot.Discord.Gateway;

/// <summary>
/// Why a connection is over and what follows. Where a person must act, the reason says what to do. The pause is a wait
/// that the cause itself demands, beside the back-off.
/// </summary>
internal sealed record ConnectionEnd(NextStep Next, string Reason, TimeSpan Pause = default)
{
    public static readonly ConnectionEnd Stopped = new(NextStep.Stop, "the room closes");
}
