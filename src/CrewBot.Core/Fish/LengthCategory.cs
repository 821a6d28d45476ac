namespace CrewBot.Core.Fish;

/// <summary>The five-cell length categories of Gabelhouse (1984), and what is shorter than the first.</summary>
public enum LengthCategory
{
    Substock,
    Stock,
    Quality,
    Preferred,
    Memorable,
    Trophy,
}
