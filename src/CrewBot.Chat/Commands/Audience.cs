namespace CrewBot.Chat.Commands;

/// <summary>Who may see a reply.</summary>
public enum Audience
{
    /// <summary>The one who asked, who may share it.</summary>
    Asker,

    /// <summary>The whole crew.</summary>
    Crew,
}
