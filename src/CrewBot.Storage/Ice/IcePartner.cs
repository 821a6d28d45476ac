namespace CrewBot.Storage.Ice;

/// <summary>A crew that this one will share reports of ice with.</summary>
/// <param name="Key">The key by which its platform knows it.</param>
/// <param name="HasAgreed">Whether it will share with this one as well: until then nothing goes over.</param>
/// <param name="ShowsSpot">Whether it may see the exact spot.</param>
public sealed record IcePartner(string Key, bool HasAgreed, bool ShowsSpot)
{
    /// <summary>What it is called; null while nobody knows, and while it has not agreed: until then it is none of this crew's business.</summary>
    public string? Name { get; init; }
}
