namespace CrewBot.Chat.Commands;

/// <summary>Opens the files that a person gives in a room: paths in a terminal, attachments on a platform.</summary>
public interface IGivenFiles
{
    /// <summary>Reads a whole file.</summary>
    /// <param name="reference">How the room names it.</param>
    /// <param name="most">The most bytes to take.</param>
    /// <param name="cancellationToken">Stops reading.</param>
    /// <returns>The bytes, or in a line why they can't be had.</returns>
    Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(string reference, int most, CancellationToken cancellationToken);
}
