namespace CrewBot.Chat.Derbies;

/// <summary>What a derby is scored by, as people call it.</summary>
public enum DerbyFormat
{
    BestTotal,
    Longest,
    OneOfEach,
    Points,
    SpeciesFair,
    Condition,
    MostFish,
}
