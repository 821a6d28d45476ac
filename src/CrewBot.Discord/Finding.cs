namespace CrewBot.Discord;

/// <summary>What a check found.</summary>
/// <param name="Subject">What was looked at.</param>
/// <param name="IsWell">Nothing needs to be done.</param>
/// <param name="Text">"ok", or what is wrong and what to do.</param>
public sealed record Finding(string Subject, bool IsWell, string Text);
