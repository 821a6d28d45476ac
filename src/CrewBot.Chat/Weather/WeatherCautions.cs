namespace CrewBot.Chat.Weather;

/// <summary>What replies about cold, dark and fire end with.</summary>
internal static class WeatherCautions
{
    public static IReadOnlyList<string> Cold { get; } =
    [
        "Cover up, and check each other's faces and fingers.",
        "White, numb or waxy skin: get to shelter, warm it gently, don't rub, get medical advice.",
        "Warnings of your weather service come before any number here.",
    ];

    public static IReadOnlyList<string> Dark { get; } =
        ["Be off the ice by sunset, not by dusk: hills, trees, cloud and snowfall end useful light earlier, and several agencies warn against ice by night."];

    public static IReadOnlyList<string> Fire { get; } =
    [
        "Only a heater marked for indoor use, one vent low and one near the top, both open and clear of snow, and a working CO alarm in the shelter.",
        "Headache, nausea, dizzy or sleepy: everyone out into fresh air, call for help. An alarm may stay silent for hours; how you feel outranks it.",
        "Heater off before anyone sleeps. Don't rely on a low-oxygen shut-off.",
        "Heater and people pool meltwater and weaken the ice beneath, and all of you are a standing load: /ice carry. Local authorities have the last word.",
    ];
}
