using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Derbies.Unasked;

/// <summary>What is called out by the clock: that it starts, and that an hour is left.</summary>
internal static class CallPosts
{
    private static readonly TimeSpan Hour = TimeSpan.FromHours(1);

    // Half an hour on, everybody is fishing; and an hour left is not ten minutes less.
    private static readonly TimeSpan StartsGoodFor = TimeSpan.FromMinutes(30);
    private static readonly TimeSpan HourGoodFor = TimeSpan.FromMinutes(5);

    public static IEnumerable<PlannedPost> Of(DerbyScene scene)
    {
        var (sheet, window) = (scene.Sheet, scene.Sheet.Settings.Window);
        if (sheet.Board.IsClosed)
        {
            yield break;
        }

        // One that starts when it is set up is announced by being set up.
        if (window.Starts > sheet.Record.OfType<Created>().First().At)
        {
            yield return Call(scene, "starts", window.Starts, StartsGoodFor, new Reply
            {
                Headline = $"{sheet.Derby.Name} has started: until {scene.Words.Time(window.Ends, window.Starts)}",
                Lines = [.. new DerbyRules(sheet.Derby, scene.Knowledge).Lines(window.Starts).Skip(1).Take(4), Anglers(sheet)],
                Actions = [DerbyActions.Join(sheet.Derby)],
            });
        }

        if (window.Ends - Hour > window.Starts)
        {
            yield return Call(scene, "hour-left", window.Ends - Hour, HourGoodFor, new Reply
            {
                Headline = $"An hour left in {sheet.Derby.Name}: until {scene.Words.Time(window.Ends, window.Ends)}",
                Lines = sheet.Standings.Lines is [var first, ..] ? [scene.Words.Line(first, sheet)] : ["No fish counts yet."],
                Actions = [DerbyActions.Standings(sheet.Derby)],
            });
        }
    }

    private static string Anglers(DerbySheet sheet) => sheet.Board.Anglers.Count() switch
    {
        0 => "Nobody has joined yet.",
        1 => "1 angler has joined.",
        var many => $"{many} anglers have joined.",
    };

    private static PlannedPost Call(DerbyScene scene, string which, DateTimeOffset due, TimeSpan goodFor, Reply body) =>
        new($"{scene.Start}{which}", scene.Place, body with { Audience = Audience.Crew }, due) { Manner = new PostManner { GoodFor = goodFor } };
}
