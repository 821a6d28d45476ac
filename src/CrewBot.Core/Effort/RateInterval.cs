namespace CrewBot.Core.Effort;

/// <summary>From one catch rate to another.</summary>
public readonly record struct RateInterval(CatchRate Low, CatchRate High);
