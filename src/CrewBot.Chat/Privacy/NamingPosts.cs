using System.Text.Encodings.Web;
using System.Text.Json;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Privacy;

/// <summary>What the bot posted and names somebody who is being erased: said again without the name, wherever it stands.</summary>
internal static class NamingPosts
{
    /// <summary>A name as replies write it in their JSON.</summary>
    public static string AsWritten(string name) => JsonEncodedText.Encode(name, JavaScriptEncoder.UnsafeRelaxedJsonEscaping).ToString();

    /// <summary>Takes names out of every post of the crew, sent or still to be sent.</summary>
    /// <param name="session">After the person was erased.</param>
    /// <param name="names">What the person is called and was called before.</param>
    /// <param name="at">When.</param>
    /// <returns>How many posts named them.</returns>
    public static async Task<int> RewordAsync(CrewSession session, IReadOnlyList<string> names, DateTimeOffset at)
    {
        var posts = new PostRepository(session);
        var others = await OthersAsync(session);
        var reworded = new HashSet<string>();
        foreach (var name in names.OrderByDescending(name => name.Length))
        {
            var rewording = new NameTaken(name, others);
            foreach (var post in await posts.ThatSayAsync(AsWritten(name)))
            {
                var body = ReplyJson.Write(rewording.OutOf(ReplyJson.Read(post.Body)));
                if (body != post.Body)
                {
                    await posts.RewordAsync(post, body, at);
                    reworded.Add(post.Key);
                }
            }
        }

        return reworded.Count;
    }

    // Names that may hold the person's and are not theirs: "Ana Bay", "Ana Lind".
    private static async Task<IReadOnlyList<string>> OthersAsync(CrewSession session)
    {
        var waters = await new WaterRepository(session).AllAsync();
        return
        [
            .. (await new MemberRepository(session).AllAsync()).Select(member => member.Name),
            .. waters.SelectMany(water => water.Spots.Select(spot => spot.Name).Prepend(water.Name)),
        ];
    }
}
