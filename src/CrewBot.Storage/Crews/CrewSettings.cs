namespace CrewBot.Storage.Crews;

/// <summary>What a crew has set.</summary>
/// <param name="Units">The units it speaks in; null for the platform's guess.</param>
/// <param name="Zone">Its time zone, by its name in the IANA database; null for the host's.</param>
/// <param name="Revision">Grows with every change to the settings and the waters.</param>
public sealed record CrewSettings(UnitSystem? Units, string? Zone, long Revision)
{
    /// <summary>What holds before anything is set.</summary>
    public static CrewSettings None { get; } = new(null, null, 0);

    /// <summary>What it is called; null while its platform has told nobody.</summary>
    public string? Name { get; init; }

    /// <summary>The number to call for help where the crew fishes; null when nobody said.</summary>
    public string? Emergency { get; init; }

    /// <summary>The platform's role of those who are called when a party is overdue; null when nobody said.</summary>
    public string? ContactRole { get; init; }
}
