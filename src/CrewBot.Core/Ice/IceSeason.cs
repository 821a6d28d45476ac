namespace CrewBot.Core.Ice;

/// <summary>A winter, counted from July to June.</summary>
public static class IceSeason
{
    private const int FirstMonth = 7;

    /// <summary>When the season of an instant began, by its own offset.</summary>
    public static DateTimeOffset StartOf(DateTimeOffset instant) =>
        new(instant.Month >= FirstMonth ? instant.Year : instant.Year - 1, FirstMonth, 1, 0, 0, 0, instant.Offset);
}
