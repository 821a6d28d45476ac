namespace CrewBot.Storage;

/// <summary>Instants as they stand in the tables: UTC Unix milliseconds.</summary>
internal static class Instants
{
    public static long Write(DateTimeOffset instant) => instant.ToUnixTimeMilliseconds();

    public static DateTimeOffset Read(long milliseconds) => DateTimeOffset.FromUnixTimeMilliseconds(milliseconds);
}
