namespace CrewBot.Core.Ice.Posts;

/// <summary>A number that stands where a thickness would, without its unit: no thickness, and never guessed to be one.</summary>
/// <param name="Number">The number; of a range its lower end.</param>
/// <param name="Place">Where, as written; null when the post does not say.</param>
public sealed record UnitlessNumber(double Number, string? Place);
