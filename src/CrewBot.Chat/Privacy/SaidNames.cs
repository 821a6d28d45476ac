using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Privacy;

/// <summary>Takes a person's name out of what the bot has said unasked, and is still to say.</summary>
internal static class SaidNames
{
    /// <summary>A name as kept replies write it.</summary>
    public static string Mention(string name) => JsonEncodedText.Encode(name, JavaScriptEncoder.UnsafeRelaxedJsonEscaping).ToString();

    /// <summary>Messages that stand are edited; what was to be said to the person alone is said no more.</summary>
    public static async Task EraseAsync(CrewSession session, CrewMember member, DateTimeOffset now)
    {
        var posts = new PostRepository(session);
        foreach (var own in (await posts.PendingAsync()).Where(post => post.Place == $"@{member.PlatformId}"))
        {
            await posts.TakeBackAsync(own.Key);
        }

        foreach (var post in (await posts.MentioningAsync(Mention(member.Name))).Where(post => !post.IsWithdrawn))
        {
            if (post is { Message: null, NextAt: null })
            {
                // Given up: nobody has seen it, and nobody shall.
                await posts.TakeBackAsync(post.Key);
                continue;
            }

            var body = ReplyJson.Write(Without(member.Name, ReplyJson.Read(post.Body)));
            await posts.SayAsync(post.Key, post.Place, body, post.Message is null ? post.DueAt : now, post.Manner);
        }
    }

    private static Reply Without(string name, Reply reply)
    {
        // As a word: Ana is not in Analysis.
        string Say(string text) => Regex.Replace(text, $@"(?<!\w){Regex.Escape(name)}(?!\w)", MemberRepository.Former, RegexOptions.CultureInvariant);
        return reply with
        {
            Headline = Say(reply.Headline),
            Lines = [.. reply.Lines.Select(Say)],
            Struck = [.. reply.Struck.Select(Say)],
            Reasons = [.. reply.Reasons.Select(Say)],
            Cautions = [.. reply.Cautions.Select(Say)],
            Actions = [.. reply.Actions.Where(action => Say(action.Command) == action.Command && Say(action.Label) == action.Label)],
        };
    }
}
