namespace CrewBot.Discord.Wire;

/// <summary>First answer that buys time. Its only choice is whether the answer will be private.</summary>
internal sealed record DeferredResponse(ResponseType Type, DeferredFlags? Data);
