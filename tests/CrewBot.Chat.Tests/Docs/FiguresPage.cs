using System.Globalization;
using System.Text;
using CrewBot.Chat.Boxes;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies;
using CrewBot.Chat.Ice;
using CrewBot.Chat.Learning;
using CrewBot.Chat.Privacy;
using CrewBot.Chat.Rigs;
using CrewBot.Chat.Trips;
using CrewBot.Chat.Weather;

namespace CrewBot.Chat.Tests.Docs;

/// <summary>Writes docs/figures.md from the keys in the code.</summary>
internal static class FiguresPage
{
    private const string Introduction = """
        # Figures

        Every number in a reply stands in its `figures` too, under a key that stays the same and in a unit that is fixed for
        the key, whatever units the crew speaks in. Values are not rounded. A reply with several rigs sets a prefix before
        the key: `alt1.` and `alt2.` for alternatives, `line2.` and up for further lines, `hole1.` and up for a crew's holes,
        `way1.` and up for ways of fishing.

        This page is written from the code by the tests of `CrewBot.Chat` and checked by them.

        | key | unit | meaning |
        | --- | --- | --- |

        """;

    /// <summary>Every key of every family.</summary>
    public static IReadOnlyList<FigureKey> All { get; } =
    [
        .. RigFigures.All, .. CatchFigures.All, .. DerbyFigures.All, .. PrivacyFigures.All, .. TripFigures.All, .. BoxFigures.All,
        .. LearnFigures.All, .. IceFigures.All, .. WeatherFigures.All,
    ];

    public static string Write()
    {
        var page = new StringBuilder(Introduction);
        foreach (var key in All)
        {
            page.Append(CultureInfo.InvariantCulture, $"| `{key.Key}` | {key.Unit} | {key.Meaning} |\n");
        }

        return page.ToString();
    }
}
