using System.Globalization;

namespace CrewBot.Chat.Quantities;

/// <summary>
/// Writes numbers with a point. Nearly all are small and have a decimal or two: written as the whole numbers that they are made
/// of, they take a fraction of the time that the general way takes.
/// </summary>
internal static class NumberWriting
{
    private const double Small = 1e6;

    // Nearer to a half than this, which way it is rounded is left to the general way.
    private const double ClearOfHalf = 0.499;

    /// <summary>A number with as many decimals as it has: "24", "7.3".</summary>
    public static string Shortest(double number)
    {
        var tenths = Math.Round(number * 10);
        return tenths is not (>= 0 and < Small) || tenths / 10 != number ? number.ToString(CultureInfo.InvariantCulture)
            : tenths % 10 == 0 ? ((int)number).ToString(CultureInfo.InvariantCulture)
            : InTenths((int)tenths);
    }

    /// <summary>A number rounded to a tenth, which is written even if it is none: "3.0".</summary>
    public static string Tenths(double number) => IsClear(number * 10)
        ? InTenths((int)Math.Round(number * 10))
        : number.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>A number rounded to a hundredth, with two decimals: "0.20".</summary>
    public static string Hundredths(double number) => IsClear(number * 100)
        ? InHundredths((int)Math.Round(number * 100))
        : number.ToString("0.00", CultureInfo.InvariantCulture);

    private static bool IsClear(double scaled) => scaled is > 0 and < Small && Math.Abs(scaled - Math.Round(scaled)) < ClearOfHalf;

    private static string InTenths(int tenths) => string.Create(CultureInfo.InvariantCulture, $"{tenths / 10}.{tenths % 10}");

    private static string InHundredths(int hundredths) =>
        string.Create(CultureInfo.InvariantCulture, $"{hundredths / 100}.{hundredths / 10 % 10}{hundredths % 10}");
}
