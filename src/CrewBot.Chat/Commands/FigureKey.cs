namespace CrewBot.Chat.Commands;

/// <summary>A number that replies may hold: its name, its fixed unit and what it is.</summary>
/// <param name="Key">Stable name, such as <c>drop.time</c>.</param>
/// <param name="Unit">The unit as scripts see it.</param>
/// <param name="Meaning">What it is, for the docs.</param>
public abstract record FigureKey(string Key, string Unit, string Meaning);
