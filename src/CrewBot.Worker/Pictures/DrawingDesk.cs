using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Pictures;
using Microsoft.Extensions.Logging;

namespace CrewBot.Worker.Pictures;

/// <summary>Draws beside whatever else goes on, two pictures at once, and never stands in the way of a text.</summary>
/// <param name="draw">Draws one as a PNG file, light or by night.</param>
/// <param name="clock">Says when patience ends.</param>
/// <param name="log">Is told why a picture is missing.</param>
internal sealed class DrawingDesk(Func<PictureData, bool, byte[]> draw, TimeProvider clock, ILogger<DrawingDesk> log)
    : IPictureDrawer, IDisposable
{
    private const int AtOnce = 2;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly SemaphoreSlim _places = new(AtOnce, AtOnce);

    public async Task<Reply> IllustrateAsync(Reply reply, CancellationToken cancellationToken)
    {
        if (!reply.Pictures.Any(picture => picture.Compose is not null))
        {
            return reply;
        }

        try
        {
            var drawn = await Task.WhenAll(reply.Pictures.Where(picture => picture.Compose is not null).Select((picture, index) => DrawAsync(picture, index, cancellationToken)))
                .WaitAsync(Patience, clock, cancellationToken);
            return reply with { Files = [.. reply.Files, .. drawn] };
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // A picture must not cost anyone the text, whatever went wrong with it: even a missing library.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogError(fault, "A picture of kind {Kind} could not be drawn.", reply.Pictures[0].Kind);
            return reply with { Lines = [.. reply.Lines, "The picture could not be drawn; here is the answer in words."] };
        }
    }

    public void Dispose() => _places.Dispose();

    private async Task<ReplyFile> DrawAsync(Picture picture, int index, CancellationToken cancellationToken)
    {
        await _places.WaitAsync(cancellationToken);
        return await Task.Run(() => Draw(picture, index), CancellationToken.None);
    }

    // A drawing that takes too long keeps its place until it ends: patience is the reader's, not the machine's.
    private ReplyFile Draw(Picture picture, int index)
    {
        try
        {
            var data = picture.Compose!();
            return new ReplyFile(NameOf(picture, index), "image/png", draw(data, picture.ByNight)) { AlternativeText = data.AlternativeText };
        }
        finally
        {
            _places.Release();
        }
    }

    private static string NameOf(Picture picture, int index) =>
        index == 0 ? $"{picture.Kind}.png" : string.Create(CultureInfo.InvariantCulture, $"{picture.Kind}-{index + 1}.png");
}
