namespace CrewBot.Core.Ice;

/// <summary>Something seen on the ice that a thickness does not tell.</summary>
public enum IceHazard
{
    /// <summary>A dry crack: common, and proves nothing either way.</summary>
    Crack,

    /// <summary>A crack with water in it.</summary>
    WetCrack,

    /// <summary>A pressure ridge or heave.</summary>
    Ridge,

    /// <summary>Water without ice.</summary>
    OpenWater,

    /// <summary>Running water under the ice.</summary>
    Current,

    /// <summary>Somebody or something broke through.</summary>
    BrokeThrough,

    /// <summary>Thin or weak ice, without a number.</summary>
    Thin,

    /// <summary>Slush.</summary>
    Slush,

    /// <summary>Water on top of the ice.</summary>
    Overflow,

    /// <summary>A spring, inlet, outlet, narrows: a place where the ice is never even.</summary>
    WeakPlace,
}
