using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Least and greatest distance between the two hooks of a rig.</summary>
public sealed record HookSpacing(Length Least, Length Most);
