using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Derbies;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Derbies.Unasked;

/// <summary>What a derby says unasked, brought in line with its record whenever something is written, in the same transaction.</summary>
public sealed class DerbyPosts(DerbyBoards boards, TradeKnowledge knowledge)
{
    /// <summary>The standings are edited no more often than this, whatever happens in between.</summary>
    public static readonly TimeSpan StandingsGap = TimeSpan.FromSeconds(5);

    /// <summary>What the keys of a derby's posts start with.</summary>
    public static string Start(Derby derby) => string.Create(CultureInfo.InvariantCulture, $"derby/{derby.Number}/");

    /// <summary>Says what the derby is to say now, and takes back what it is to say no more.</summary>
    public async Task KeepAsync(CrewSession session, Derby derby, Request request)
    {
        if (derby.Place is not { } place)
        {
            return;
        }

        var posts = new PostRepository(session);
        var sheet = await boards.SheetAsync(session, derby, request);
        var said = (await posts.UnderAsync(Start(derby))).ToDictionary(post => post.Key);
        var wanted = Wanted(new DerbyScene(sheet, knowledge, place, request.At), [.. said.Values]).ToDictionary(post => post.Key);
        foreach (var gone in said.Values.Where(post => post.Message is null && !wanted.ContainsKey(post.Key)))
        {
            await posts.TakeBackAsync(gone.Key);
        }

        foreach (var post in wanted.Values)
        {
            await SayAsync(posts, said.GetValueOrDefault(post.Key), post, request.At);
        }
    }

    /// <summary>A catch no longer counts in the log: wherever it was entered, the standings change.</summary>
    public async Task CatchChangedAsync(CrewSession session, long catchNumber, Request request)
    {
        foreach (var (derby, _) in await new LedgerRepository(session).EntriesAsync(catchNumber))
        {
            await KeepAsync(session, (await new DerbyRepository(session).FindAsync(derby, memberId: null))!, request);
        }
    }

    // What was shown stays as its readers saw it, unless it is live; what waits follows the derby.
    private static Task SayAsync(PostRepository posts, Post? said, PlannedPost wanted, DateTimeOffset now) => said switch
    {
        null when wanted.Due < now && !wanted.IsUrgent => Task.CompletedTask,
        { Message: not null } when !wanted.IsLive => Task.CompletedTask,
        _ => posts.SayAsync(wanted.Key, wanted.Place, ReplyJson.Write(wanted.Body), wanted.IsLive && wanted.Due < now ? now : wanted.Due, wanted.Manner),
    };

    private static IEnumerable<PlannedPost> Wanted(DerbyScene scene, IReadOnlyList<Post> said) =>
    [
        .. CallPosts.Of(scene),
        .. LeaderPosts.Of(scene, said),
        .. ResultPosts.Of(scene),
        .. Standings(scene),
    ];

    // From the first fish on: before, there is nothing that the announcements do not say.
    private static IEnumerable<PlannedPost> Standings(DerbyScene scene) => scene.Sheet.Board.Entries.Count == 0 ? [] :
    [
        new PlannedPost($"{scene.Start}standings", scene.Place, StandingsReply.Of(scene.Sheet, scene.Knowledge, scene.Now, member: null) with { Audience = Audience.Crew }, scene.Now)
        {
            Manner = new PostManner { Gap = StandingsGap },
            IsLive = true,
        },
    ];
}
