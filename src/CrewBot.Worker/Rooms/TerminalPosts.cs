using System.Collections.Concurrent;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Rooms;

/// <summary>Shows in this terminal what nobody asked for, above the line that is being typed.</summary>
internal sealed class TerminalPosts(ILineSource lines, ReplyRenderer renderer, Surroundings surroundings, Caller caller) : IChatPost
{
    /// <summary>The place that a command typed here was given in.</summary>
    public const string Room = "room";

    private readonly ConcurrentDictionary<string, string> _headlines = new();

    // A place of digits alone is a platform's, whose room may be open in another process on the same database.
    public bool Reaches(string crew, string place) =>
        crew == caller.Crew && !place.TrimStart('@').All(char.IsAsciiDigit);

    public Task<Posted> PostAsync(string place, string key, Reply reply, bool notifies, CancellationToken cancellationToken)
    {
        var mark = notifies ? $"{place}, attention" : place;
        Show(reply.Calls is { } role ? $"{mark} @{role}" : mark, key, reply);
        return Task.FromResult(new Posted(place, key));
    }

    public Task EditAsync(Posted posted, Reply reply, CancellationToken cancellationToken)
    {
        Show($"{posted.Place}, edited", posted.Id, reply);
        return Task.CompletedTask;
    }

    public Task DeleteAsync(Posted posted, CancellationToken cancellationToken)
    {
        Write(new Reply
        {
            Headline = _headlines.TryRemove(posted.Id, out var headline)
                ? $"[{posted.Place}] Taken back: {headline}"
                : $"[{posted.Place}] An earlier post was taken back.",
        });
        return Task.CompletedTask;
    }

    public Task<string> OpenThreadAsync(Posted under, string name, CancellationToken cancellationToken) =>
        Task.FromResult($"{under.Place}/{name}");

    private void Show(string mark, string id, Reply reply)
    {
        _headlines[id] = reply.Headline;
        Write(reply with { Headline = $"[{mark}] {reply.Headline}" });
    }

    private void Write(Reply reply) => lines.WriteAbove(() =>
    {
        renderer.Write(reply, withActions: false);
        surroundings.Output.WriteLine();
    });
}
