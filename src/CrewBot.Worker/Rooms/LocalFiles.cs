using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms;

/// <summary>Files by their paths, for whoever sits at this machine.</summary>
internal sealed class LocalFiles : IGivenFiles
{
    public static LocalFiles Instance { get; } = new();

    public async Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(string reference, int most, CancellationToken cancellationToken)
    {
        try
        {
            await using var file = new FileStream(reference, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 4096, useAsync: true);
            var content = new byte[Math.Min(file.Length, most + 1L)];
            var length = await file.ReadAtLeastAsync(content, content.Length, throwOnEndOfStream: false, cancellationToken);
            return length <= most
                ? (ReadOnlyMemory<byte>)content.AsMemory(0, length)
                : new Misread($"{reference} is larger than {most / 1_000_000} MB: split it.");
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            return new Misread($"There is no file {reference}.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return new Misread($"{reference} can't be read: {fault.Message}");
        }
    }
}
