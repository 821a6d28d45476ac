namespace CrewBot.Core.Knowledge;

/// <summary>What a bait is, as rules of the water tell baits apart.</summary>
public enum BaitKind
{
    LiveFish,
    DeadFish,
    CutFish,
    Insect,
    Dough,
    Soft,
}
