using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>A required thickness of new clear ice, and by which rule.</summary>
/// <param name="Thickness">At least so much.</param>
/// <param name="Rule">The rule, with its working where it has one.</param>
/// <param name="Source">Who published it.</param>
/// <param name="Date">When, as far as was seen.</param>
public sealed record IceFigure(Length Thickness, FormattableString Rule, string Source, string Date);
