using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace CrewBot.Core.Rigs;

/// <summary>
/// A hook's size on the customary scale: ... 8, 6, 4, 2, 1, 1/0, 2/0, 3/0 ..., each larger than the one before.
/// </summary>
/// <remarks>
/// An order, not a measure (common practice): plain numbers fall as hooks grow, then the aught sizes rise. Makers
/// differ, and no standard fixes the gap. The default value is size 1.
/// </remarks>
public readonly record struct HookSize : IComparable<HookSize>
{
    private const int SmallestPlain = 32;
    private const int LargestAught = 20;

    /// <summary>The sizes that shops carry, smallest first: even numbers up to 2, then 1, then the aughts.</summary>
    public static IReadOnlyList<HookSize> TradeSizes { get; } =
        [.. new[] { "16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0", "3/0", "4/0", "5/0", "6/0" }.Select(Parse)];

    private HookSize(int rank) => Rank = rank;

    /// <summary>Place in the order: n for n/0, 1 − n for a plain n. A larger hook has a higher rank.</summary>
    public int Rank { get; }

    public static bool operator <(HookSize left, HookSize right) => left.CompareTo(right) < 0;

    public static bool operator >(HookSize left, HookSize right) => left.CompareTo(right) > 0;

    public static bool operator <=(HookSize left, HookSize right) => left.CompareTo(right) <= 0;

    public static bool operator >=(HookSize left, HookSize right) => left.CompareTo(right) >= 0;

    /// <summary>Reads a size as it stands on the packet: "6" or "2/0".</summary>
    /// <param name="text">A whole number from 1 to 32, or one from 1 to 20 followed by "/0".</param>
    /// <exception cref="FormatException"><paramref name="text"/> is not a hook size.</exception>
    public static HookSize Parse(string text) => TryParse(text, out var size)
        ? size
        : throw new FormatException($"'{text}' is not a hook size: expected 32 to 1, or 1/0 to 20/0.");

    /// <summary>Reads a size as it stands on the packet, or tells that it is none.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out HookSize size)
    {
        var digits = text.AsSpan().Trim();
        var aught = digits.EndsWith("/0", StringComparison.Ordinal);
        if (aught)
        {
            digits = digits[..^2];
        }

        size = default;
        if (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number < 1
            || number > (aught ? LargestAught : SmallestPlain))
        {
            return false;
        }

        size = new HookSize(aught ? number : 1 - number);
        return true;
    }

    public int CompareTo(HookSize other) => Rank.CompareTo(other.Rank);

    /// <summary>Writes the size as it stands on the packet.</summary>
    public override string ToString() => Rank > 0
        ? string.Create(CultureInfo.InvariantCulture, $"{Rank}/0")
        : (1 - Rank).ToString(CultureInfo.InvariantCulture);
}
