using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Derbies.Unasked;

/// <summary>A derby that something is to be said of.</summary>
/// <param name="Sheet">The derby.</param>
/// <param name="Knowledge">What the trade knows.</param>
/// <param name="Place">Where it is said.</param>
/// <param name="Now">When what changed it was written.</param>
internal sealed record DerbyScene(DerbySheet Sheet, TradeKnowledge Knowledge, string Place, DateTimeOffset Now)
{
    public DerbyWords Words { get; } = new(Sheet.Derby, Knowledge);

    /// <summary>What the keys of its posts start with.</summary>
    public string Start { get; } = DerbyPosts.Start(Sheet.Derby);
}
