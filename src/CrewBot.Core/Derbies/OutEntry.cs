namespace CrewBot.Core.Derbies;

/// <summary>An entry that does not count, and why.</summary>
public sealed record OutEntry(EntryState Entry, OutReason Why);
