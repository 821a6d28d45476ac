using System.Globalization;

namespace CrewBot.Core.Rigs;

public readonly record struct HookSize(int Rank) : IComparable<HookSize>
{
    public static bool TryParse(string text, out HookSize size)
    {
        size = default;
        var aught = text.EndsWith("/0", StringComparison.Ordinal);
        if (!int.TryParse(aught ? text[..^2] : text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return false;
        }

        size = new HookSize(aught ? number : 1 - number);
        return number > 0;
    }

    public int CompareTo(HookSize other) => Rank.CompareTo(other.Rank);

    public override string ToString() => Rank > 0 ? $"{Rank}/0" : $"{1 - Rank}";

    public static bool operator <(HookSize left, HookSize right) => left.Rank < right.Rank;

    public static bool operator >(HookSize left, HookSize right) => left.Rank > right.Rank;

    public static bool operator <=(HookSize left, HookSize right) => left.Rank <= right.Rank;

    public static bool operator >=(HookSize left, HookSize right) => left.Rank >= right.Rank;
}
