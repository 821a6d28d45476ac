using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Core.Rigs;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Outbox;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips.Unasked;

/// <summary>What a trip says unasked, brought in line with the trip whenever it changes, in the same transaction.</summary>
public sealed class TripPosts(RigPlanner planner)
{
    /// <summary>What the keys of a trip's posts start with.</summary>
    public static string Start(Trip trip) => string.Create(CultureInfo.InvariantCulture, $"trip/{trip.Number}/");

    /// <summary>Says what the trip is to say now, and takes back what it is to say no more.</summary>
    public async Task KeepAsync(CrewSession session, TripScene scene, Request request)
    {
        var posts = new PostRepository(session);
        var said = await posts.UnderAsync(Start(scene.Trip));
        var wanted = Wanted(scene, request).ToDictionary(post => post.Key);
        foreach (var post in said)
        {
            if (wanted.TryGetValue(post.FirstKey, out var still))
            {
                await FollowAsync(posts, post, still, request.At);
            }
            else if (post.Message is null)
            {
                await posts.TakeBackAsync(post.Key);
            }
            else if (post.Manner.Again is not null && OverduePosts.Ended(scene, post.Key, request.Caller.Zone) is { } ended)
            {
                // Whoever scrolls up must not call for help any more, and whoever was alarmed must learn of it.
                await posts.SayAsync(post.Key, post.Place, ReplyJson.Write(ended), request.At);
                await posts.SayAsync($"all-clear/{post.FirstKey}", post.Place, ReplyJson.Write(ended), request.At, new PostManner { Notifies = true });
            }
        }

        foreach (var post in wanted.Values.Where(post => said.All(one => one.Key != post.Key) && (post.IsUrgent || post.Due >= request.At)))
        {
            await posts.SayAsync(post.Key, post.Place, ReplyJson.Write(post.Body), post.Due, post.Manner);
        }
    }

    // What was shown stays as its readers saw it, unless it is live; what waits follows the trip.
    private static Task FollowAsync(PostRepository posts, Post post, PlannedPost wanted, DateTimeOffset now) =>
        wanted.IsLive ? posts.SayAsync(post.Key, wanted.Place, ReplyJson.Write(wanted.Body), wanted.Due > now ? wanted.Due : now, wanted.Manner)
        : post.Message is null ? posts.SayAsync(post.Key, wanted.Place, ReplyJson.Write(wanted.Body), post.DueAt, wanted.Manner)
        : Task.CompletedTask;

    private IEnumerable<PlannedPost> Wanted(TripScene scene, Request request) =>
    [
        .. OverduePosts.Of(scene, request.Caller.Zone),
        .. ReminderPosts.Of(scene, request.Caller.Zone),
        .. PocketCards.Of(scene, request, planner),
        .. Live(scene, request),
    ];

    private static IEnumerable<PlannedPost> Live(TripScene scene, Request request) => scene.Contacts.Room is not { } room ? [] :
    [
        new PlannedPost($"{Start(scene.Trip)}card", room, TripCard.Of(scene, request) with { Audience = Audience.Crew }, request.At)
        {
            Manner = new PostManner { Gap = TripRules.CardGap },
            IsLive = true,
        },
    ];
}
