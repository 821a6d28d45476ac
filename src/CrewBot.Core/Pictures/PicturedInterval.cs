namespace CrewBot.Core.Pictures;

/// <summary>A value and the range that it is likely in.</summary>
/// <param name="Name">What was measured.</param>
/// <param name="Note">The numbers in words.</param>
/// <param name="Low">The low end; 0 or more.</param>
/// <param name="Value">The value.</param>
/// <param name="High">The high end.</param>
public sealed record PicturedInterval(string Name, string Note, double Low, double Value, double High);
