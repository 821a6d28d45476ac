namespace CrewBot.Core.Ice.Posts;

/// <summary>When a post says that it was so.</summary>
/// <param name="At">The earliest instant it may mean, in the writer's own time: "this morning" is from midnight on.</param>
/// <param name="IsExact">Whether it means that instant rather than a part of a day.</param>
public readonly record struct PostedTime(DateTimeOffset At, bool IsExact);
