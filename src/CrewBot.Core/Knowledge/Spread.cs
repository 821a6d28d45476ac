namespace CrewBot.Core.Knowledge;

/// <summary>A customary spread with both ends included: no single true value stands behind it.</summary>
/// <typeparam name="T">A number or a quantity.</typeparam>
public sealed record Spread<T>
    where T : IComparable<T>
{
    public required T Low { get; init; }

    public required T High { get; init; }
}
