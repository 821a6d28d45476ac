using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Chat.Boxes;

/// <summary>Labels and hand scales name a force by the mass that weighs as much; so it is stored.</summary>
internal static class TestMass
{
    // A label or a hand scale is never read finer.
    private const int Places = 4;

    public static ExactMass Of(Force force, CrewUnits units) => units == CrewUnits.Customary
        ? ExactMass.From((decimal)Math.Round(force.PoundsForce, Places), MassUnit.Pound)
        : ExactMass.From((decimal)Math.Round(force.KilogramsForce, Places), MassUnit.Kilogram);

    public static Force ToForce(ExactMass mass) => Force.FromKilogramsForce(mass.Mass.Kilograms);
}
