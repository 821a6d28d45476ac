using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Posts;

/// <summary>Says what nobody asked for: relays, reminders, standings. Each room that can do so brings its own.</summary>
public interface IChatPost
{
    /// <summary>Posts a reply.</summary>
    /// <param name="place">The channel or thread.</param>
    /// <param name="key">The same for the same message: posting it again within minutes makes no second one.</param>
    /// <param name="reply">What to say.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <returns>Where it stands, to be kept by whoever may want to edit it.</returns>
    Task<Posted> PostAsync(string place, string key, Reply reply, CancellationToken cancellationToken);

    /// <summary>Replaces what a post says.</summary>
    Task EditAsync(Posted posted, Reply reply, CancellationToken cancellationToken);

    /// <summary>Takes a post back; one that is gone already is no fault.</summary>
    Task DeleteAsync(Posted posted, CancellationToken cancellationToken);

    /// <summary>Opens a thread under a post, or finds the one that is there.</summary>
    /// <returns>The thread, a place to post to.</returns>
    Task<string> OpenThreadAsync(Posted under, string name, CancellationToken cancellationToken);
}
