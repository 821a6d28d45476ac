using CrewBot.Core.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>What kinds of ice, hazards and loads are called.</summary>
public static class IceWords
{
    public static IReadOnlyList<(string Word, IceKind Value)> Kinds { get; } =
    [
        ("clear", IceKind.Clear), ("white", IceKind.White), ("unknown", IceKind.Unknown), ("grey", IceKind.Grey),
        ("candled", IceKind.Candled), ("slushy", IceKind.Slushy), ("layered", IceKind.Layered), ("refrozen", IceKind.Refrozen),
    ];

    public static IReadOnlyList<(string Word, IceKind Value)> OtherKinds { get; } =
    [
        ("black", IceKind.Clear), ("blue", IceKind.Clear), ("snow ice", IceKind.White), ("milky", IceKind.White),
        ("gray", IceKind.Grey), ("dark", IceKind.Grey), ("honeycombed", IceKind.Candled), ("rotten", IceKind.Candled),
    ];

    public static IReadOnlyList<(string Word, IceHazard Value)> Hazards { get; } =
    [
        ("crack", IceHazard.Crack), ("wet crack", IceHazard.WetCrack), ("ridge", IceHazard.Ridge), ("open water", IceHazard.OpenWater),
        ("current", IceHazard.Current), ("broke through", IceHazard.BrokeThrough), ("thin ice", IceHazard.Thin),
        ("slush", IceHazard.Slush), ("overflow", IceHazard.Overflow), ("weak place", IceHazard.WeakPlace),
    ];

    public static IReadOnlyList<(string Word, IceHazard Value)> OtherHazards { get; } =
    [
        ("fell through", IceHazard.BrokeThrough), ("went through", IceHazard.BrokeThrough), ("broke thru", IceHazard.BrokeThrough),
        ("fell thru", IceHazard.BrokeThrough), ("went thru", IceHazard.BrokeThrough), ("thin", IceHazard.Thin),
        ("pressure ridge", IceHazard.Ridge), ("heave", IceHazard.Ridge), ("open hole", IceHazard.OpenWater),
        ("water on top", IceHazard.Overflow), ("spring", IceHazard.WeakPlace), ("dry crack", IceHazard.Crack),
    ];

    public static IReadOnlyList<(string Word, IceUse Value)> Uses { get; } =
    [
        ("on foot", IceUse.OnFoot), ("gathering", IceUse.Gathering), ("snowmobile", IceUse.Snowmobile), ("side-by-side", IceUse.SideBySide),
        ("car", IceUse.Car), ("pickup", IceUse.Pickup), ("heavy truck", IceUse.HeavyTruck),
    ];

    public static string Of(IceKind kind) => Kinds.First(known => known.Value == kind).Word;

    public static string Of(IceHazard hazard) => Hazards.First(known => known.Value == hazard).Word;

    /// <summary>What is against the ice, without a number: where to stay off, a thickness is only a temptation.</summary>
    public static string Against(IReadOnlyList<IceHazard> hazards) => string.Join(", ", hazards.Select(Of).DefaultIfEmpty("thin or weak ice"));
}
