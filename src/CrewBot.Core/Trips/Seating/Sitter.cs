namespace CrewBot.Core.Trips.Seating;

/// <summary>Somebody who is to sit under cover.</summary>
/// <param name="Key">Tells people of the same name apart.</param>
/// <param name="Name">What the crew calls them.</param>
public sealed record Sitter(string Key, string Name)
{
    /// <summary>For a child: the key of who looks after it, and sits with it.</summary>
    public string? Guardian { get; init; }

    /// <summary>Smokes in the shelter.</summary>
    public bool Smokes { get; init; }

    /// <summary>Asks for a shelter where nobody smokes.</summary>
    public bool AsksSmokeFree { get; init; }

    /// <summary>The key of the shelter they were told before somebody dropped out; null when none was.</summary>
    public string? Before { get; init; }
}
