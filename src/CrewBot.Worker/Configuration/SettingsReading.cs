namespace CrewBot.Worker.Configuration;

/// <summary>The outcome of reading the configuration: the settings, or every fault found.</summary>
/// <param name="Settings">Null when there is any fault.</param>
/// <param name="Faults">Key, value and remedy, each in one line.</param>
internal sealed record SettingsReading(Settings? Settings, IReadOnlyList<string> Faults);
