using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Boxes;

/// <summary>The words for gear.</summary>
internal static class GearWords
{
    /// <summary>The most that one shelter is taken to seat.</summary>
    public const int MostSeats = 20;

    private static readonly Dictionary<string, BoxKind> ByWord = new()
    {
        ["leader"] = BoxKind.Leader,
        ["hook"] = BoxKind.Hook,
        ["auger"] = BoxKind.Auger,
        ["drill"] = BoxKind.Auger,
        ["shelter"] = BoxKind.Shelter,
        ["shack"] = BoxKind.Shelter,
        ["hut"] = BoxKind.Shelter,
        ["tent"] = BoxKind.Shelter,
        ["heater"] = BoxKind.Heater,
        ["stove"] = BoxKind.Heater,
        ["sled"] = BoxKind.Sled,
        ["sledge"] = BoxKind.Sled,
        ["toboggan"] = BoxKind.Sled,
        ["rescue"] = BoxKind.RescueKit,
        ["pick"] = BoxKind.RescueKit,
        ["rope"] = BoxKind.RescueKit,
    };

    /// <summary>One of each kind, as a person would write it.</summary>
    public static IReadOnlyList<string> Examples { get; } =
        ["1/8oz jigging spoon", "hook 6", "auger 8in", "shelter for 3", "heater", "sled", "rescue kit"];

    /// <summary>The kind that one of the words names, a plural s or not; null when none does.</summary>
    public static BoxKind? KindNamedIn(IEnumerable<string> words) => words
        .Select(word => ByWord.TryGetValue(word.TrimEnd('s'), out var kind) ? kind : (BoxKind?)null)
        .FirstOrDefault(kind => kind is not null);

    /// <summary>What a line of a box is headed. Two kinds share one, so that a box fits a phone.</summary>
    public static string HeadingOf(BoxKind kind) => kind switch
    {
        BoxKind.Line => "Lines",
        BoxKind.Leader => "Leaders",
        BoxKind.Lure => "Lures",
        BoxKind.Hook => "Hooks",
        BoxKind.Auger => "Augers",
        BoxKind.Shelter => "Shelters",
        BoxKind.Heater => "Heaters",
        _ => "Sleds and rescue kits",
    };

    /// <summary>Things with how many there are of each: "heater, 2 × braid 6 lb".</summary>
    public static string Listed(IEnumerable<Gear> things) => string.Join(", ", things
        .GroupBy(gear => gear.Name)
        .Select(same => same.Count() > 1 ? $"{same.Count()} × {same.Key}" : same.Key));
}
