namespace CrewBot.Discord.Gateway;

/// <summary>The sessions of a process that ended as it should.</summary>
/// <param name="Bot">Whose they are: another token can't take them up.</param>
/// <param name="At">When they were put by.</param>
/// <param name="Sessions">One a shard.</param>
internal sealed record SavedSessions(string Bot, DateTimeOffset At, IReadOnlyList<SavedSession> Sessions);
