using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Storage.Outbox;

namespace CrewBot.Worker.Background;

/// <summary>Hands each post to the room that its place belongs to.</summary>
internal sealed class RoomPosts(IEnumerable<IChatPost> rooms, TimeProvider clock) : IPostSender
{
    /// <summary>What is shown later than this says so, if it has a line for it.</summary>
    public static readonly TimeSpan Late = TimeSpan.FromMinutes(5);

    private readonly IChatPost[] _rooms = [.. rooms];

    public bool Reaches(string crew, string place) => _rooms.Any(room => room.Reaches(crew, place));

    public async Task<PostMessage> ShowAsync(string crew, Post post, CancellationToken cancellationToken)
    {
        var posted = await JudgedAsync(() => PostAsync(crew, post, post.Nonce, cancellationToken));
        return new PostMessage(posted.Place, posted.Id);
    }

    public async Task<PostMessage> EditAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken)
    {
        var posted = await JudgedAsync(async () =>
        {
            var stands = new Posted(message.Place, message.Id);
            try
            {
                await RoomOf(crew, post.Place).EditAsync(stands, ReplyJson.Read(post.Body), cancellationToken);
                return stands;
            }
            catch (PostGoneException)
            {
                // What a crew should see is there again; a name of its own keeps the platform from answering with the old one.
                return await PostAsync(crew, post, $"{post.Nonce}/{post.Revision}", cancellationToken);
            }
        });
        return new PostMessage(posted.Place, posted.Id);
    }

    public Task RemoveAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken) =>
        JudgedAsync(async () =>
        {
            await RoomOf(crew, post.Place).DeleteAsync(new Posted(message.Place, message.Id), cancellationToken);
            return true;
        });

    private Task<Posted> PostAsync(string crew, Post post, string name, CancellationToken cancellationToken)
    {
        var reply = ReplyJson.Read(post.Body);
        if (post.Manner.LateLine is { } line && clock.GetUtcNow() - post.DueAt > Late)
        {
            reply = reply with { Lines = [line, .. reply.Lines] };
        }

        return RoomOf(crew, post.Place).PostAsync(post.Place, name, reply, post.Manner.Notifies, cancellationToken);
    }

    private IChatPost RoomOf(string crew, string place) => _rooms.First(room => room.Reaches(crew, place));

    private static async Task<T> JudgedAsync<T>(Func<Task<T>> attempt)
    {
        try
        {
            return await attempt();
        }
        catch (PostImpossibleException refused)
        {
            throw new PostRefusedException(refused.Message);
        }
    }
}
