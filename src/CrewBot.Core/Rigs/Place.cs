namespace CrewBot.Core.Rigs;

/// <summary>Where the angler sits, which decides whether wet line freezes.</summary>
public enum Place
{
    /// <summary>On the open ice.</summary>
    Open,

    /// <summary>In a heated shelter.</summary>
    Shelter,
}
