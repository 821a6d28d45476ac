using System.Security.Cryptography;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Photos;

/// <summary>
/// Looks at the photo that comes with a fish, so that the same one is known again under another link, and hands it to whoever
/// keeps copies. A fish is logged whether or not its photo can be had.
/// </summary>
public sealed class PhotoDesk(IPhotoCopies copies)
{
    private const int MostBytes = 10_000_000;

    // An angler waits for the answer with a glove off.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>Looks at a photo; null when the request has none.</summary>
    public static async Task<TakenPhoto?> TakeAsync(Request request, CommandOption<Attachment> option, CancellationToken cancellationToken)
    {
        if (!request.TryGet(option, out var photo))
        {
            return null;
        }

        // A link that nobody attached may lead anywhere.
        if (photo.Id is null && !photo.Address.IsFile)
        {
            return new TakenPhoto(photo.Reference, null, default, null);
        }

        if (photo.Size > MostBytes)
        {
            return new TakenPhoto(photo.Reference, null, default, $"it is larger than {MostBytes / 1_000_000} MB");
        }

        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        patience.CancelAfter(Patience);
        try
        {
            var read = await request.Files.ReadAsync(photo, MostBytes, patience.Token);
            return read.Fault is { } fault
                ? new TakenPhoto(photo.Reference, null, default, fault.TrimEnd('.'))
                : new TakenPhoto(photo.Reference, Convert.ToHexStringLower(SHA256.HashData(read.Value.Span)), read.Value, null);
        }
        catch (OperationCanceledException) when (!cancellationToken.IsCancellationRequested)
        {
            return new TakenPhoto(photo.Reference, null, default, "it took too long to come");
        }
    }

    /// <summary>Keeps a copy of a photo whose fish is in the log.</summary>
    public Task KeepAsync(Request request, TakenPhoto? photo, CancellationToken cancellationToken) => photo?.Hash is { } hash
        ? copies.KeepAsync(request.Caller.Crew!, hash, photo.Content, cancellationToken)
        : Task.CompletedTask;

    /// <summary>What to say of a photo that could not be looked at.</summary>
    public static IEnumerable<string> Remarks(TakenPhoto? photo) => photo?.Fault is { } fault
        ? [$"The photo's link is kept; the photo itself was not looked at: {fault}."]
        : [];
}
