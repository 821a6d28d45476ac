using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Pictures;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Drawing.Tests;

/// <summary>An invented fortnight on an invented lake, told through the commands, and the picture of its board.</summary>
internal static class IceDays
{
    private static readonly DateTimeOffset Asked = new(2027, 1, 16, 12, 30, 0, TimeSpan.Zero);

    private static readonly (double DaysBefore, string Who, string What)[] Reports =
    [
        (12, "Ida", "spot:\"north bay\" clear:5in"),
        (10, "Marek", "spot:\"cabin point\" clear:6in"),
        (8.2, "Ida", "spot:\"north bay\" clear:6in white:1in"),
        (6, "Noor", "spot:\"cabin point\" white:9in"),
        (4.9, "Marek", "spot:\"the narrows\" clear:7in"),
        (4, "Ida", "spot:\"north bay\" clear:8in white:1in"),
        (1.1, "Bo", "spot:\"south landing\" hazard:\"broke through\" note:\"by the dock\""),
        (0.4, "Noor", "spot:\"cabin point\" total:10in"),
        (0.25, "Ida", "spot:\"north bay\" holes:\"9 10 9in\" kind:clear"),
    ];

    /// <summary>The picture of the board.</summary>
    public static async Task<PictureData> BoardAsync(CrewUnits units, CancellationToken cancellationToken)
    {
        var folder = Directory.CreateTempSubdirectory("crewbot-");
        try
        {
            await using var book = CrewBook.At(Path.Combine(folder.FullName, "crew.db"));
            await using var services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, book).BuildServiceProvider();
            async Task<Reply> SayAsync(string line, DateTimeOffset at, string who = "Ida")
            {
                var typed = CommandText.Read(line, services.GetRequiredService<CommandCatalog>()).Value!;
                var call = new CommandCall($"{line} {at:O}", at, new Caller("tamarack-bay", who, Role.Owner, units), typed.Path, typed.Options);
                return await services.GetRequiredService<Dispatcher>().AnswerAsync(call, cancellationToken);
            }

            await SayAsync("/crew setup water:\"Loon Basin\"", Asked.AddDays(-13));
            foreach (var (daysBefore, who, what) in Reports)
            {
                var filed = await SayAsync($"/ice report water:\"Loon Basin\" {what}", Asked.AddDays(-daysBefore), who);
                Assert.Null(filed.Problem);
            }

            var button = (await SayAsync("/ice board water:\"Loon Basin\"", Asked)).Actions.Single(action => action.Kind == ActionKind.Picture);
            return (await SayAsync(button.Command, Asked)).Pictures.Single().Compose!();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
