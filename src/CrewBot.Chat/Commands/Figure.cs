namespace CrewBot.Chat.Commands;

/// <summary>A number of a reply as data.</summary>
/// <param name="Key">Stable name, such as <c>drop.time</c>, with a prefix where a reply holds several rigs.</param>
/// <param name="Value">The number, unrounded.</param>
/// <param name="Unit">Always the same for a key.</param>
public sealed record Figure(string Key, double Value, string Unit);
