namespace CrewBot.Chat.Commands;

/// <summary>A picture that a reply asks for.</summary>
/// <param name="Kind">What is to be drawn.</param>
/// <param name="AlternativeText">What it shows, for whoever can't see it.</param>
public sealed record Picture(string Kind, string AlternativeText);
