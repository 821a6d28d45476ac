namespace CrewBot.Discord.Gateway;

/// <summary>A session as it is put by for the next start.</summary>
internal sealed record SavedSession(int Shard, int Count, string Id, string Address, long Sequence);
