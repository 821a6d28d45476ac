using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Core.Derbies;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Derbies.Unasked;

/// <summary>Announces who leads anew, at most one in a while: who led and lost it meanwhile is left out.</summary>
internal static class LeaderPosts
{
    /// <summary>The least time from one announcement to the next.</summary>
    public static readonly TimeSpan Gap = TimeSpan.FromMinutes(5);

    // So many keep the keys in their order.
    private const int Digits = 4;

    /// <param name="scene">The derby.</param>
    /// <param name="said">Everything that the derby has said; who led stands in the keys.</param>
    public static IEnumerable<PlannedPost> Of(DerbyScene scene, IReadOnlyList<Post> said)
    {
        // Two who are level lead together; that is no news until they are parted.
        if (scene.Sheet.Standings.Lines is not [{ IsShared: false } leading, ..] || scene.Sheet.Board.IsClosed)
        {
            return [];
        }

        var start = $"{scene.Start}leader/";
        var announced = said.Where(post => post.Key.StartsWith(start, StringComparison.Ordinal)).OrderBy(post => post.Key, StringComparer.Ordinal).ToList();
        var waiting = announced.LastOrDefault(post => post is { Message: null, NextAt: not null });
        var last = announced.LastOrDefault(post => post != waiting);
        var who = leading.Tally.Who;
        if (last is not null && WhoOf(last, start) == WordOf(who))
        {
            return [];
        }

        var due = last is { } before && before.DueAt + Gap > scene.Now ? before.DueAt + Gap : scene.Now;
        return waiting is not null && WhoOf(waiting, start) == WordOf(who)
            ? [Announcement(scene, waiting.Key, leading, waiting.DueAt)]
            : [Announcement(scene, KeyOf(start, announced is [.., var newest] ? NumberOf(newest, start) + 1 : 1, who), leading, due)];
    }

    private static PlannedPost Announcement(DerbyScene scene, string key, Standing leading, DateTimeOffset due)
    {
        var (sheet, words) = (scene.Sheet, scene.Words);
        return new PlannedPost(
            key,
            scene.Place,
            new Reply
            {
                Headline = $"{sheet.NameOf(leading.Tally.Who)} leads {sheet.Derby.Name} with {words.Total(leading.Tally.Total)}",
                Lines = [.. sheet.Standings.Lines.Skip(1).Take(1).Select(line => $"Behind: {words.Line(line, sheet)}")],
                Actions = [DerbyActions.Standings(sheet.Derby)],
                Audience = Audience.Crew,
            },
            due)
        {
            Manner = new PostManner { GoodFor = Gap },
        };
    }

    private static string KeyOf(string start, int number, Competitor who) => string.Create(CultureInfo.InvariantCulture, $"{start}{number:D4}/{WordOf(who)}");

    private static int NumberOf(Post post, string start) => int.Parse(post.Key.AsSpan(start.Length, Digits), CultureInfo.InvariantCulture);

    private static string WhoOf(Post post, string start) => post.Key[(start.Length + Digits + 1)..];

    private static string WordOf(Competitor who) => who.Team ?? who.Angler!.Value.ToString(CultureInfo.InvariantCulture);
}
