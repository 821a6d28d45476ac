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

    /// <summary>Answers a request that may come with a photo: a copy is kept once its fish is in the log.</summary>
    /// <param name="request">The request.</param>
    /// <param name="option">The option that names the photo.</param>
    /// <param name="answer">Answers, with the photo that was looked at; null when the request has none.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<Reply> WithPhotoAsync(
        Request request, CommandOption<Attachment> option, Func<TakenPhoto?, Task<Reply>> answer, CancellationToken cancellationToken)
    {
        var photo = await TakeAsync(request, option, cancellationToken);
        var reply = await answer(photo);
        if (reply.Problem is null && photo?.Hash is { } hash)
        {
            await copies.KeepAsync(request.Caller.Crew!, hash, photo.Content, cancellationToken);
        }

        return reply;
    }

    /// <summary>What to say of a photo that could not be looked at.</summary>
    public static IEnumerable<string> Remarks(TakenPhoto? photo) => photo?.Fault is { } fault
        ? [$"The photo's link is kept; the photo itself was not looked at: {fault}."]
        : [];

    private static async Task<TakenPhoto?> TakeAsync(Request request, CommandOption<Attachment> option, CancellationToken cancellationToken)
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
}
