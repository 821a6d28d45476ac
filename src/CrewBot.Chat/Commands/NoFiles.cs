namespace CrewBot.Chat.Commands;

/// <summary>For a room that takes no files.</summary>
public sealed class NoFiles : IGivenFiles
{
    public static NoFiles Instance { get; } = new();

    public Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(Attachment file, int most, CancellationToken cancellationToken) =>
        Task.FromResult<Reading<ReadOnlyMemory<byte>>>(new Misread("This room takes no files."));
}
