namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A crewmate saw the fish.</summary>
public sealed record Witnessed(int Number, DateTimeOffset At, long By, int Entry) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { Witness = By };
}
