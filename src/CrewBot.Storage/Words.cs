namespace CrewBot.Storage;

/// <summary>Writes the members of an enumeration as the words that stand in the tables.</summary>
internal static class Words
{
    public static string Write<T>(T value)
        where T : struct, Enum =>
        value.ToString().ToLowerInvariant();

    public static T? Read<T>(string? word)
        where T : struct, Enum =>
        word is null ? null : Enum.Parse<T>(word, ignoreCase: true);
}
