namespace CrewBot.Storage.Crews;

/// <summary>A rule of a water as the crew read it.</summary>
/// <param name="Rule">What it is about: <c>lines</c>, <c>hooks</c>, <c>lead</c>, <c>limit walleye</c>.</param>
/// <param name="Value">What it says.</param>
/// <param name="Reference">Where the authority says so.</param>
public sealed record WaterRule(string Rule, string Value, string Reference);
