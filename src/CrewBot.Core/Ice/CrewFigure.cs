using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>A crew's own figure for a use, with where it has it from. It can only raise what is required.</summary>
/// <param name="Use">For what.</param>
/// <param name="Thickness">At least so much new clear ice.</param>
/// <param name="Reference">Where the crew has it from, with its date.</param>
public sealed record CrewFigure(IceUse Use, Length Thickness, string Reference);
