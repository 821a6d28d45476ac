using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>A report that was filed just now.</summary>
/// <param name="Filed">The report.</param>
/// <param name="Water">The water's name.</param>
/// <param name="Channels">How many channels are told of it.</param>
/// <param name="Meant">The spot that its own may be a slip for; null where none is near.</param>
internal sealed record ToldIce(FiledIce Filed, string Water, int Channels, string? Meant);
