namespace CrewBot.Storage.Boxes;

/// <summary>A thing and whose it is.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="MemberId">Number of the owner.</param>
/// <param name="Owner">What the owner is called.</param>
/// <param name="Gear">The thing.</param>
public sealed record OwnedGear(long Number, long MemberId, string Owner, Gear Gear);
