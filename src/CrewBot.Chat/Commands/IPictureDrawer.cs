namespace CrewBot.Chat.Commands;

/// <summary>Draws what goes with a reply.</summary>
public interface IPictureDrawer
{
    /// <summary>Draws the pictures of a reply. Never fails: whoever asked gets the words at least.</summary>
    /// <returns>The reply with its pictures as files, or with a line that says they could not be drawn.</returns>
    Task<Reply> IllustrateAsync(Reply reply, CancellationToken cancellationToken);
}
