using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Privacy;

/// <summary>Takes a name out of what the bot has said or will say by itself: what stands in a channel is edited.</summary>
internal sealed class PostedNames
{
    private readonly string _name;
    private readonly Regex _whole;

    public PostedNames(string name)
    {
        _name = name;
        _whole = new Regex($@"(?<![\p{{L}}\p{{N}}]){Regex.Escape(name)}(?![\p{{L}}\p{{N}}])", RegexOptions.CultureInvariant);
    }

    /// <summary>Replaces it everywhere in the crew.</summary>
    /// <param name="session">The crew.</param>
    /// <param name="mention">The name as JSON writes it.</param>
    /// <param name="at">Now.</param>
    public async Task ReplaceAsync(CrewSession session, string mention, DateTimeOffset at)
    {
        var posts = new PostRepository(session);
        foreach (var post in await posts.MentioningAsync(mention))
        {
            var body = ReplyJson.Write(Replaced(ReplyJson.Read(post.Body)));
            if (body != post.Body)
            {
                await posts.RewordAsync(post.Key, body, at);
            }
        }
    }

    // A button or a list that names the person would act on somebody who is gone.
    private Reply Replaced(Reply reply) => reply with
    {
        Headline = Text(reply.Headline),
        Lines = [.. reply.Lines.Select(Text)],
        Struck = [.. reply.Struck.Select(Text)],
        Reasons = [.. reply.Reasons.Select(Text)],
        Cautions = [.. reply.Cautions.Select(Text)],
        Actions = [.. reply.Actions.Where(IsOfOthers)],
        Choices = [.. reply.Choices.Select(list => list with { Choices = [.. list.Choices.Where(IsOfOthers)] }).Where(list => list.Choices.Count > 0)],
    };

    private bool IsOfOthers(ReplyAction action) => !_whole.IsMatch(action.Label) && !_whole.IsMatch(action.Command);

    private string Text(string text) => text.Contains(_name, StringComparison.Ordinal) ? _whole.Replace(text, MemberRepository.Former) : text;
}
