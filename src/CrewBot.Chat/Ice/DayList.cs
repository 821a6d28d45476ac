using CrewBot.Core.Weather;

namespace CrewBot.Chat.Ice;

/// <summary>The warmest and coldest of days on end.</summary>
/// <param name="Days">Earliest first, none left out.</param>
/// <param name="LacksUnits">Whether any number came without a unit and took the crew's.</param>
public sealed record DayList(IReadOnlyList<DayTemperatures> Days, bool LacksUnits);
