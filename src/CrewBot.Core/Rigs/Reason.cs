namespace CrewBot.Core.Rigs;

/// <summary>Why something in a rig is as it is, or how a number came about.</summary>
/// <param name="About">The part it is about: "mainline", "weight".</param>
/// <param name="Why">A sentence; its quantities are written by whoever shows it, in the reader's units.</param>
public sealed record Reason(string About, FormattableString Why);
