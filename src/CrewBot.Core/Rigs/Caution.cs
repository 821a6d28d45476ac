namespace CrewBot.Core.Rigs;

/// <summary>Something to beware of.</summary>
/// <param name="Text">A sentence; its quantities are written by whoever shows it.</param>
/// <param name="Trigger">What set it off, for whoever checks.</param>
public sealed record Caution(FormattableString Text, FormattableString Trigger);
