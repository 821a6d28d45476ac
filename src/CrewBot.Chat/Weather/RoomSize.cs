using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>The room in a shelter, as a box.</summary>
/// <param name="Deep">One side.</param>
/// <param name="Wide">The other.</param>
/// <param name="High">To the roof.</param>
public sealed record RoomSize(Length Deep, Length Wide, Length High)
{
    // What one can nearly stand up in; common practice.
    private static readonly Length Usual = Length.FromMeters(1.9);

    /// <summary>Walls and roof.</summary>
    public Area Skin => (2 * High * (Deep + Wide)) + (Deep * Wide);

    /// <summary>The air in it.</summary>
    public Volume Air => Deep * Wide * High;

    /// <summary>A square room over the ice that a shelter covers, of the usual height.</summary>
    public static RoomSize Over(Area footprint)
    {
        var side = Length.FromMeters(Math.Sqrt(footprint.SquareMeters));
        return new(side, side, Usual);
    }
}
