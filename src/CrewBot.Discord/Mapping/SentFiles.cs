using CrewBot.Chat.Commands;
using Attachment = CrewBot.Chat.Commands.Attachment;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Fetches the files that people send along, from the platform's own file servers and from nowhere else: an address that
/// somebody made up must not be asked from here.
/// </summary>
/// <param name="http">Follows no redirection.</param>
/// <param name="apiBaseAddress">The platform's API; a compatible server keeps its files on the same host.</param>
internal sealed class SentFiles(HttpClient http, Uri apiBaseAddress) : IGivenFiles
{
    private static readonly string[] FileServers = ["cdn.discordapp.com", "media.discordapp.net"];

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    public async Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(Attachment file, int most, CancellationToken cancellationToken)
    {
        if (!IsThePlatforms(file.Address))
        {
            return new Misread("A link is not followed from here: attach the file itself.");
        }

        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        patience.CancelAfter(Patience);
        try
        {
            using var response = await http.GetAsync(file.Address, HttpCompletionOption.ResponseHeadersRead, patience.Token);
            if (!response.IsSuccessStatusCode)
            {
                return new Misread("The platform no longer has that file: attach it again.");
            }

            await using var stream = await response.Content.ReadAsStreamAsync(patience.Token);
            return await ReadAsync(stream, most, patience.Token) is { } content
                ? content
                : new Misread($"That file is larger than {most / 1_000_000} MB: split it.");
        }
        catch (Exception fault) when (fault is HttpRequestException or IOException || (fault is OperationCanceledException && !cancellationToken.IsCancellationRequested))
        {
            return new Misread("The file could not be fetched from the platform: try again in a moment.");
        }
    }

    private bool IsThePlatforms(Uri address) =>
        (address.Scheme == Uri.UriSchemeHttps && FileServers.Contains(address.Host, StringComparer.OrdinalIgnoreCase))
        || (address.Scheme == apiBaseAddress.Scheme && address.Authority == apiBaseAddress.Authority);

    private static async Task<ReadOnlyMemory<byte>?> ReadAsync(Stream stream, int most, CancellationToken cancellationToken)
    {
        using var content = new MemoryStream();
        var piece = new byte[81_920];
        for (int length; (length = await stream.ReadAsync(piece, cancellationToken)) > 0;)
        {
            if (content.Length + length > most)
            {
                return null;
            }

            content.Write(piece, 0, length);
        }

        return content.ToArray();
    }
}
