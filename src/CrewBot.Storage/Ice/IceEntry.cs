namespace CrewBot.Storage.Ice;

/// <summary>A report of ice as it is filed.</summary>
/// <param name="MemberId">Who filed it.</param>
/// <param name="WaterId">Which water.</param>
/// <param name="FiledAt">When it was filed.</param>
/// <param name="Page">What it says.</param>
public sealed record IceEntry(long MemberId, long WaterId, DateTimeOffset FiledAt, IcePage Page)
{
    /// <summary>The named spot; null when nobody said.</summary>
    public string? Spot { get; init; }

    /// <summary>When it was measured; null when nobody said.</summary>
    public DateTimeOffset? MeasuredAt { get; init; }
}
