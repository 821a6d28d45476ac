namespace CrewBot.Chat.Privacy;

/// <summary>What a person wants done with what is held on them.</summary>
public enum PrivacyWish
{
    Show,
    Export,
    Erase,
}
