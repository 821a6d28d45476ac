using System.Globalization;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Crews;

/// <summary>Reads a time zone by its name in the IANA database.</summary>
public sealed class ZoneReader : OptionReader<TimeZoneInfo>
{
    private const int MostSuggested = 25;
    private const int NearestShown = 3;

    // Clocks of a country go by a name of its own: US/Central, Canada/Atlantic.
    private static readonly string[] Countries = ["US/", "Canada/"];

    public override string Accepts => "a time zone, such as America/Winnipeg or UTC";

    public override Reading<TimeZoneInfo> Read(string text, CrewUnits units)
    {
        var name = text.Replace(' ', '_');
        if (TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone))
        {
            return zone;
        }

        // A city alone is a part of its zone's name, "central" one of those that clocks are called by; "toronot" is near one.
        var called = Countries.Select(country => country + CultureInfo.InvariantCulture.TextInfo.ToTitleCase(CityOf(name).ToLowerInvariant())).Where(id => TimeZoneInfo.TryFindSystemTimeZoneById(id, out _)).ToList();
        var offered = called.Count > 0 ? called
            : Suggest(name).ToList() is [_, ..] holding ? holding
            : [.. Nearest.Near(CityOf(name), Known.Select(CityOf)).SelectMany(Suggest)];
        var offer = offered.Count > 0 ? $"Nearest: {string.Join(", ", offered.Distinct().Take(NearestShown))}." : $"Give {Accepts}.";
        return new Misread($"{Quoting.Quote(text)} is no time zone. {offer}");
    }

    public override IEnumerable<string> Suggest(string begun) => Known
        .Where(id => id.Contains(begun, StringComparison.OrdinalIgnoreCase))
        .Take(MostSuggested);

    private static IEnumerable<string> Known => TimeZoneInfo.GetSystemTimeZones().Select(zone => zone.Id);

    private static string CityOf(string id) => id[(id.LastIndexOf('/') + 1)..];
}
