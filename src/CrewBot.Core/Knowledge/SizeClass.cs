namespace CrewBot.Core.Knowledge;

/// <summary>How heavy a species runs through the ice, as far as tackle is concerned.</summary>
public enum SizeClass
{
    /// <summary>Perch, sunfish, crappie: a hand long.</summary>
    Panfish,

    /// <summary>Walleye, stocked trout, whitefish: an arm long.</summary>
    Mid,

    /// <summary>Lake trout and char.</summary>
    Big,

    /// <summary>Pike and muskellunge.</summary>
    Giant,
}
