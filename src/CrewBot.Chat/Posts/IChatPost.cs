using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Posts;

/// <summary>Says what nobody asked for: relays, reminders, standings. Each room that can do so brings its own.</summary>
public interface IChatPost
{
    /// <summary>Whether a place of a crew is one of this room's.</summary>
    bool Reaches(string crew, string place);

    /// <summary>Posts a reply.</summary>
    /// <param name="place">The channel or thread, or <c>@</c> and a person's id for a direct message.</param>
    /// <param name="key">The same for the same message: posting it again within minutes makes no second one.</param>
    /// <param name="reply">What to say.</param>
    /// <param name="notifies">Whether its readers' devices may ring.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <returns>Where it stands, to be kept by whoever may want to edit it.</returns>
    /// <exception cref="PostImpossibleException">It can't be posted there, however often it is tried.</exception>
    Task<Posted> PostAsync(string place, string key, Reply reply, bool notifies, CancellationToken cancellationToken);

    /// <summary>Replaces what a post says. Nobody is notified.</summary>
    /// <exception cref="PostGoneException">Somebody has removed it.</exception>
    /// <exception cref="PostImpossibleException">It can't be edited, however often it is tried.</exception>
    Task EditAsync(Posted posted, Reply reply, CancellationToken cancellationToken);

    /// <summary>Takes a post back; one that is gone already is no fault.</summary>
    /// <exception cref="PostImpossibleException">It can't be taken back, however often it is tried.</exception>
    Task DeleteAsync(Posted posted, CancellationToken cancellationToken);

    /// <summary>Opens a thread under a post, or finds the one that is there.</summary>
    /// <returns>The thread, a place to post to.</returns>
    Task<string> OpenThreadAsync(Posted under, string name, CancellationToken cancellationToken);
}
