using CrewBot.Chat.Commands;

namespace CrewBot.Chat.CatchFiles;

/// <summary>The options of exporting and importing.</summary>
public sealed class CatchFileOptions
{
    public CommandOption<bool> AsJson { get; } = CommandOption.Optional(
        "format", "CSV for a spreadsheet and for import, or JSON", new ChoiceReader<bool>([("csv", false), ("json", true)]));

    public CommandOption<Attachment> File { get; } = CommandOption.Required(
        "file", "The CSV file", new AttachmentReader("a CSV file"));

    public CommandOption<bool> Confirm { get; } = CommandOption.Optional(
        "confirm", "Write it: without this nothing is", new ChoiceReader<bool>([("yes", true)]));
}
