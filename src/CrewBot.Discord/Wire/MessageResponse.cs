namespace CrewBot.Discord.Wire;

/// <summary>First answer to an interaction: a message, an update of one, or a deferral of either.</summary>
internal sealed record MessageResponse(ResponseType Type, MessageBody? Data);
