using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Derbies.Unasked;

/// <summary>What is said at the end: that it is closed, and the results once nobody can protest any more.</summary>
internal static class ResultPosts
{
    private static readonly TimeSpan ClosedGoodFor = TimeSpan.FromHours(12);

    public static IEnumerable<PlannedPost> Of(DerbyScene scene)
    {
        var sheet = scene.Sheet;
        if (sheet.Record.LastOrDefault(written => written is Closed or Reopened) is not Closed closed)
        {
            return [];
        }

        // The second after: at the last instant a protest is still heard.
        var final = sheet.ProtestsUntil + TimeSpan.FromSeconds(1);
        var due = final > closed.At ? final : closed.At;
        return
        [
            new PlannedPost(KeyOf(scene, "closed", closed), scene.Place, ClosedBody(scene, closed.At), closed.At)
            {
                Manner = new PostManner { GoodFor = ClosedGoodFor },
                IsUrgent = true,
            },
            new PlannedPost(KeyOf(scene, "results", closed), scene.Place, ResultsBody(scene, due > scene.Now ? due : scene.Now), due) { IsUrgent = true, IsLive = true },
        ];
    }

    private static Reply ClosedBody(DerbyScene scene, DateTimeOffset at) => new()
    {
        Headline = $"{scene.Sheet.Derby.Name} is closed",
        Lines = scene.Sheet.ProtestsUntil > at
            ? [$"Protests are heard until {scene.Words.Time(scene.Sheet.ProtestsUntil, at)}; the results follow."]
            : ["The results follow."],
        Actions = [DerbyActions.Standings(scene.Sheet.Derby)],
        Audience = Audience.Crew,
    };

    // Whoever wants the file asks for it.
    private static Reply ResultsBody(DerbyScene scene, DateTimeOffset at) => ResultsReply.Of(scene.Sheet, scene.Knowledge, at) with
    {
        Files = [],
        Actions = [DerbyActions.Results(scene.Sheet.Derby)],
    };

    // Closed again after it was open again, it is news again.
    private static string KeyOf(DerbyScene scene, string which, Closed closed) =>
        string.Create(CultureInfo.InvariantCulture, $"{scene.Start}{which}/{closed.Number}");
}
