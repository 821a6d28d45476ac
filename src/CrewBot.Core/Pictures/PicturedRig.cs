namespace CrewBot.Core.Pictures;

/// <summary>A rig as a chain of parts.</summary>
/// <param name="Job">What it does beside another: "Caller"; null when it is alone.</param>
/// <param name="Parts">From the rod down.</param>
public sealed record PicturedRig(string? Job, IReadOnlyList<PicturedPart> Parts);
