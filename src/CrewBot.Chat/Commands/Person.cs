namespace CrewBot.Chat.Commands;

/// <summary>Somebody who was pointed at.</summary>
/// <param name="Id">The platform's own id of the person.</param>
public sealed record Person(string Id)
{
    /// <summary>A platform's mention: the person is there, whether or not the crew has heard of them.</summary>
    public bool IsMentioned { get; init; }

    /// <summary>The text that an option holds, as a platform mentions them.</summary>
    public string Text => $"<@{Id}>";
}
