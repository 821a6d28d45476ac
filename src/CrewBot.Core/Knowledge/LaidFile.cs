namespace CrewBot.Core.Knowledge;

/// <summary>The file that had the last word on a record.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Layer">Its place in the pile; a later file lies on top.</param>
internal readonly record struct LaidFile(string Name, int Layer);
