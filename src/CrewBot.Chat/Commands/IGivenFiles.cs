namespace CrewBot.Chat.Commands;

/// <summary>Opens the files that a person gives in a room: paths in a terminal, attachments on a platform.</summary>
public interface IGivenFiles
{
    /// <summary>Reads a whole file.</summary>
    /// <param name="file">The file, as an option holds it.</param>
    /// <param name="most">The most bytes to take.</param>
    /// <param name="cancellationToken">Stops reading.</param>
    /// <returns>The bytes, or in a line why they can't be had.</returns>
    Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(Attachment file, int most, CancellationToken cancellationToken);
}
