using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>Tenths of an inch or centimetre for display: measured goes down, required goes up, so that no text flatters.</summary>
public static class IceRounding
{
    private const long TenthOfInch = 2_540_000;
    private const long TenthOfCentimetre = 1_000_000;

    /// <summary>Tenths of an inch in a measured thickness.</summary>
    public static decimal MeasuredInches(Length thickness) => Down(thickness, TenthOfInch);

    /// <summary>Tenths of a centimetre in a measured thickness.</summary>
    public static decimal MeasuredCentimetres(Length thickness) => Down(thickness, TenthOfCentimetre);

    /// <summary>Tenths of an inch that a required thickness takes.</summary>
    public static decimal RequiredInches(Length thickness) => Up(thickness, TenthOfInch);

    /// <summary>Tenths of a centimetre that a required thickness takes.</summary>
    public static decimal RequiredCentimetres(Length thickness) => Up(thickness, TenthOfCentimetre);

    private static decimal Down(Length thickness, long step) => (IceLength.Measured(thickness) / step) / 10m;

    private static decimal Up(Length thickness, long step) => ((IceLength.Required(thickness) + step - 1) / step) / 10m;
}
