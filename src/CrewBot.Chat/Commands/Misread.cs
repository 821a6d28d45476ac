namespace CrewBot.Chat.Commands;

/// <summary>Says why a text could not be read.</summary>
/// <param name="Why">What was given and what is accepted, in a line.</param>
public readonly record struct Misread(string Why);
