namespace CrewBot.Core.Rigs;

/// <summary>Something chosen, or what stood in the way.</summary>
/// <typeparam name="T">What was to be chosen.</typeparam>
/// <param name="Made">Null when there is an obstacle.</param>
/// <param name="Obstacle">Null when a choice was made.</param>
internal readonly record struct Choice<T>(T? Made, FormattableString? Obstacle)
    where T : class
{
    public static implicit operator Choice<T>(T made) => new(made, null);

    public static implicit operator Choice<T>(FormattableString obstacle) => new(null, obstacle);
}
