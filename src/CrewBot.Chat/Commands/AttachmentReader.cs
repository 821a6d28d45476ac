namespace CrewBot.Chat.Commands;

/// <summary>Reads a file that was sent along; where none can be, a link or, at this computer's own terminal, a path.</summary>
/// <param name="noun">What it is, with its article: "a photo".</param>
public sealed class AttachmentReader(string noun) : OptionReader<Attachment>
{
    public override OptionKind Kind => OptionKind.File;

    public override string Accepts => $"{noun}: attach it, or give a link; in the terminal the path of a file too";

    public override Reading<Attachment> Read(string text, CrewUnits units) =>
        Uri.TryCreate(text, UriKind.Absolute, out var link) && link.Scheme is "https" or "http"
            ? Attachment.Of(link)
            : new Misread($"{Quoting.Quote(text)} is no link to {noun}. Give {Accepts}.");

    public override Reading<Attachment> Read(string text, Caller caller)
    {
        // A path from anywhere else would let a stranger read this computer's files.
        if (!caller.FilesAreHere || text.Contains("://", StringComparison.Ordinal) || text.Contains('\0', StringComparison.Ordinal))
        {
            return Read(text, caller.Units);
        }

        var file = new FileInfo(text);
        return file.Exists
            ? new Attachment(new Uri(file.FullName), file.Name) { Size = file.Length }
            : new Misread($"There is no file {Quoting.Quote(text)}. Give {Accepts}.");
    }
}
