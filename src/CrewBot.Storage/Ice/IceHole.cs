using CrewBot.Core.Ice;
using UnitsNet;

namespace CrewBot.Storage.Ice;

/// <summary>What was measured in one hole. What nobody said is null.</summary>
/// <param name="Clear">Of new clear ice.</param>
/// <param name="White">Of white ice.</param>
/// <param name="Unsorted">Of ice that nobody named.</param>
/// <param name="Weak">A kind that counts as none.</param>
public sealed record IceHole(IceThickness? Clear, IceThickness? White, IceThickness? Unsorted, IceKind? Weak)
{
    public IceSection ToSection() => new(LengthOf(Clear), LengthOf(White), LengthOf(Unsorted), Weak);

    private static Length LengthOf(IceThickness? thickness) => thickness?.ToExact().Length ?? Length.Zero;
}
