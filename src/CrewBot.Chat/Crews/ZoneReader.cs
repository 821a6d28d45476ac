using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Crews;

/// <summary>Reads a time zone by its name in the IANA database.</summary>
public sealed class ZoneReader : OptionReader<TimeZoneInfo>
{
    private const int MostSuggested = 25;

    public override string Accepts => "a time zone, such as America/Winnipeg or UTC";

    public override Reading<TimeZoneInfo> Read(string text, CrewUnits units)
    {
        var name = text.Replace(' ', '_');
        if (TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone))
        {
            return zone;
        }

        var nearest = Nearest.To(name, TimeZoneInfo.GetSystemTimeZones().Select(known => known.Id), 3);
        return new Misread($"{Quoting.Quote(text)} is no time zone. Nearest: {string.Join(", ", nearest)}.");
    }

    public override IEnumerable<string> Suggest(string begun) => TimeZoneInfo.GetSystemTimeZones()
        .Select(zone => zone.Id)
        .Where(id => id.Contains(begun, StringComparison.OrdinalIgnoreCase))
        .Take(MostSuggested);
}
