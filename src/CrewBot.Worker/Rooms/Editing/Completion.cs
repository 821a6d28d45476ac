namespace CrewBot.Worker.Rooms.Editing;

/// <summary>What could go on where the cursor stands.</summary>
/// <param name="Start">Where in the line the candidates begin.</param>
/// <param name="Candidates">Whole replacements for what stands between there and the cursor, best first.</param>
internal sealed record Completion(int Start, IReadOnlyList<string> Candidates);
