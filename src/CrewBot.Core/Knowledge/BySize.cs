namespace CrewBot.Core.Knowledge;

/// <summary>One value for each size of fish, small to trophy.</summary>
/// <typeparam name="T">What differs with the size.</typeparam>
public sealed record BySize<T>
{
    public required T Small { get; init; }

    public required T Typical { get; init; }

    public required T Large { get; init; }

    public required T Trophy { get; init; }

    /// <summary>The value for one size.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="size"/> is no size.</exception>
    public T this[FishSize size] => size switch
    {
        FishSize.Small => Small,
        FishSize.Typical => Typical,
        FishSize.Large => Large,
        FishSize.Trophy => Trophy,
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Size must be small, typical, large or trophy."),
    };
}
