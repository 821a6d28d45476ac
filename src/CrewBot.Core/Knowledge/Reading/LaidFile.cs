namespace CrewBot.Core.Knowledge.Reading;

/// <summary>A knowledge file.</summary>
/// <param name="Name">Its name, for faults.</param>
/// <param name="ByCrew">Laid over the built-in ones by a crew.</param>
internal readonly record struct LaidFile(string Name, bool ByCrew);
