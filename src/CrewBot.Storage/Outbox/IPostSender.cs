namespace CrewBot.Storage.Outbox;

/// <summary>Brings posts to their readers.</summary>
public interface IPostSender
{
    /// <summary>Whether this process can say something there; what it can't reach waits for one that can.</summary>
    bool Reaches(string crew, string place);

    /// <summary>Shows a post for the first time; its nonce lets the platform drop a second copy.</summary>
    /// <exception cref="PostRefusedException">The platform will never take it.</exception>
    Task<PostMessage> ShowAsync(string crew, Post post, CancellationToken cancellationToken);

    /// <summary>Makes a post that stands there say what it shall.</summary>
    /// <returns>Where it stands: elsewhere when somebody had removed it.</returns>
    /// <exception cref="PostRefusedException">The platform will never take it.</exception>
    Task<PostMessage> EditAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken);

    /// <summary>Takes a post back; one that is gone already is no fault.</summary>
    /// <exception cref="PostRefusedException">The platform will never let it go.</exception>
    Task RemoveAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken);
}
