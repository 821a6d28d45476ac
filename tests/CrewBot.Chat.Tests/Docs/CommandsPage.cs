using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Docs;

/// <summary>Writes docs/commands.md from the commands in the code.</summary>
internal static class CommandsPage
{
    private const string Introduction = """
        # Commands

        Quantities read in any unit that fits: `24ft`, `24'`, `7.3 m`, `4 fathoms`, `1/8 oz`, `3.5g`, `8 lb 3 oz`, `-12C`, `20 below`. A bare
        number takes the crew's own unit. What is not given has a default, and the reply names it.
        Typed in a line, the first option needs no name: `/catch best walleye`; where there is `ask`, that is what words alone are.

        This page is written from the code by the tests of `CrewBot.Chat` and checked by them.

        """;

    public static string Write(CommandCatalog catalog)
    {
        var page = new StringBuilder(Introduction);
        foreach (var info in catalog.Commands)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## /{info.Path}\n\n{info.Description}.\n\n    {info.Example}\n\n");
            if (info.Shorthand is { } shorthand)
            {
                page.Append(CultureInfo.InvariantCulture, $"Takes plain words too, as `{shorthand.Words.Name}` or without any option name.\n\n");
            }

            page.Append("| option | | what it is | what it accepts |\n| --- | --- | --- | --- |\n");
            foreach (var option in info.Options)
            {
                page.Append(CultureInfo.InvariantCulture, $"| `{option.Name}` | {(option.IsRequired ? "required" : "")} | {option.Description} | {option.Accepts} |\n");
            }
        }

        return page.ToString();
    }
}
