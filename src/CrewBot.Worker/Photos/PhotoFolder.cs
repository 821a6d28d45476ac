using System.Security.Cryptography;
using System.Text;
using CrewBot.Chat.Photos;
using Microsoft.Extensions.Logging;

namespace CrewBot.Worker.Photos;

/// <summary>
/// Keeps copies of photos in a folder, a folder a crew, each file named by its content. It never takes more room than it may:
/// what no longer fits is not kept, and the log says so.
/// </summary>
/// <param name="folder">The folder; made at the first photo.</param>
/// <param name="mostBytes">How much all of them together may take.</param>
/// <param name="log">Where it is said that one was not kept.</param>
internal sealed class PhotoFolder(string folder, long mostBytes, ILogger<PhotoFolder> log) : IPhotoCopies, IDisposable
{
    /// <summary>Bytes in a megabyte.</summary>
    public const long Megabyte = 1_000_000;

    private readonly SemaphoreSlim _one = new(1, 1);

    // What the copies take at the most, null until it has been counted: a folder of thousands is not walked for each photo.
    private long? _used;

    public async Task KeepAsync(string crew, string hash, ReadOnlyMemory<byte> photo, CancellationToken cancellationToken)
    {
        var path = PathOf(crew, hash);
        await _one.WaitAsync(cancellationToken);
        try
        {
            if (File.Exists(path))
            {
                return;
            }

            if (!HasRoomFor(photo.Length))
            {
                log.LogWarning("A photo was not kept: the copies would take more than {Megabytes} MB. Raise CrewBot:PhotoMegabytes, or move old ones away.", mostBytes / Megabyte);
                return;
            }

            CreateFolder(Path.GetDirectoryName(path)!);
            await WriteAsync(path, photo, cancellationToken);
            _used += photo.Length;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            log.LogWarning("A photo was not kept: {Reason}", fault.Message);
        }
        finally
        {
            _one.Release();
        }
    }

    public int Delete(string crew, IReadOnlyCollection<string> hashes)
    {
        var there = hashes.Select(hash => PathOf(crew, hash)).Where(File.Exists).ToList();
        try
        {
            there.ForEach(File.Delete);
        }
        catch (UnauthorizedAccessException fault)
        {
            throw new IOException(fault.Message, fault);
        }

        return there.Count;
    }

    public void Dispose() => _one.Dispose();

    /// <summary>How many bytes the copies in a folder take.</summary>
    public static long Used(string folder) => Directory.Exists(folder)
        ? new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories).Sum(file => file.Length)
        : 0;

    // Where it seems full it is counted anew: some may have been deleted, or moved away by hand.
    private bool HasRoomFor(long bytes)
    {
        if (_used is null || _used + bytes > mostBytes)
        {
            _used = Used(folder);
        }

        return _used + bytes <= mostBytes;
    }

    // A crew's key comes from a platform or from whoever starts the program: it names no folder as it is.
    private string PathOf(string crew, string hash) =>
        Path.Combine(folder, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(crew)))[..16], hash);

    // A photo that came to nothing leaves no part of itself: nobody would ever delete it.
    private static async Task WriteAsync(string path, ReadOnlyMemory<byte> photo, CancellationToken cancellationToken)
    {
        var part = $"{path}.part";
        try
        {
            await File.WriteAllBytesAsync(part, photo, cancellationToken);
            File.Move(part, path, overwrite: true);
        }
        finally
        {
            File.Delete(part);
        }
    }

    private static void CreateFolder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }
}
