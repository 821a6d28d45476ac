namespace CrewBot.Storage.Crews;

/// <summary>A water that a crew fishes.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Name">What the crew calls it.</param>
/// <param name="Names">Every name it answers to, its own among them.</param>
/// <param name="Spots">The places in it that have a name.</param>
/// <param name="Rules">What the crew has read of its rules; a rule that is missing is unknown.</param>
public sealed record Water(
    long Id, string Name, IReadOnlyList<string> Names, IReadOnlyList<Spot> Spots, IReadOnlyList<WaterRule> Rules)
{
    /// <summary>Where it lies, to two decimals of a degree; null when nobody said.</summary>
    public (decimal Latitude, decimal Longitude)? At { get; init; }
}
