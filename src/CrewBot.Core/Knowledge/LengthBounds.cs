using CrewBot.Core.Fish;
using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>Where each length category begins; its bound belongs to it.</summary>
public sealed record LengthBounds
{
    public required Length Stock { get; init; }

    public required Length Quality { get; init; }

    public required Length Preferred { get; init; }

    public required Length Memorable { get; init; }

    public required Length Trophy { get; init; }

    /// <summary>The shortest length of a category; zero for substock.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="category"/> is no category.</exception>
    public Length this[LengthCategory category] => category switch
    {
        LengthCategory.Substock => Length.Zero,
        LengthCategory.Stock => Stock,
        LengthCategory.Quality => Quality,
        LengthCategory.Preferred => Preferred,
        LengthCategory.Memorable => Memorable,
        LengthCategory.Trophy => Trophy,
        _ => throw new ArgumentOutOfRangeException(nameof(category), category, "Must be a length category."),
    };
}
