namespace CrewBot.Storage.Catches;

/// <summary>A winter's fishing: from 1 July to 30 June, named by the year it starts in.</summary>
public static class Season
{
    /// <summary>The month that a season starts in.</summary>
    public const int StartsInMonth = 7;

    /// <summary>The season that holds an instant, by the clock that it is given on.</summary>
    public static int Of(DateTimeOffset at) => at.Month >= StartsInMonth ? at.Year : at.Year - 1;
}
