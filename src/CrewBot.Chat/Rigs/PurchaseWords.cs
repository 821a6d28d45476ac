using CrewBot.Chat.Quantities;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>Says what to buy.</summary>
internal static class PurchaseWords
{
    /// <summary>"Buy next: 10 lb (4.5 kg) braid: then a jigging spoon can be tied."</summary>
    public static string Next(Purchase? purchase, Showing show) => purchase is null
        ? "Buy next: nothing; no one thing would make this better."
        : $"Buy next: {purchase.What.ToString(show)}: {purchase.Why.ToString(show)}.";

    /// <summary>Why nothing can be tied, and what to buy for it, in a line.</summary>
    public static string Missing(RigAsk ask, Purchase purchase, Showing show)
    {
        var also = purchase.Also.Count > 0 ? $"; it needs {string.Join(" and ", purchase.Also.Select(what => what.ToString(show)))} too" : "";
        return $"Your box makes no rig for {RigWords.Word(ask.Mood)} {ask.Species.Name} here. Buy {purchase.What.ToString(show)}: {purchase.Why.ToString(show)}{also}.";
    }
}
