using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms;

/// <summary>Files by their paths, for whoever sits at this machine.</summary>
internal sealed class LocalFiles : IGivenFiles
{
    public static LocalFiles Instance { get; } = new();

    public async Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(Attachment file, int most, CancellationToken cancellationToken)
    {
        if (!file.Address.IsFile)
        {
            return new Misread("A link is not followed from here: give the path of a file.");
        }

        var path = file.Address.LocalPath;
        try
        {
            await using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 4096, useAsync: true);
            var content = new byte[Math.Min(stream.Length, most + 1L)];
            var length = await stream.ReadAtLeastAsync(content, content.Length, throwOnEndOfStream: false, cancellationToken);
            return length <= most
                ? (ReadOnlyMemory<byte>)content.AsMemory(0, length)
                : new Misread($"{path} is larger than {most / 1_000_000} MB: split it.");
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            return new Misread($"There is no file {path}.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return new Misread($"{path} can't be read: {fault.Message}");
        }
    }
}
