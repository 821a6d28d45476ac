using CrewBot.Chat.Commands;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Posts;

/// <summary>Something that is to be said unasked.</summary>
/// <param name="Key">What it is, unique in the crew.</param>
/// <param name="Place">Where.</param>
/// <param name="Body">What.</param>
/// <param name="Due">When.</param>
internal sealed record PlannedPost(string Key, string Place, Reply Body, DateTimeOffset Due)
{
    public PostManner Manner { get; init; } = PostManner.Quiet;

    /// <summary>What it says follows its matter even after it was shown; other posts stay as their readers saw them.</summary>
    public bool IsLive { get; init; }

    /// <summary>It is said even when its time has passed.</summary>
    public bool IsUrgent { get; init; }
}
