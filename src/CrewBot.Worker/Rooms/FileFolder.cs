using System.Globalization;
using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms;

/// <summary>The folder that files of replies are written to. What is there already stays as it is.</summary>
/// <param name="path">The folder; made when there is none.</param>
/// <param name="pictures">Another folder for pictures; null for the same.</param>
internal sealed class FileFolder(string path, string? pictures = null)
{
    private const int MostOfAName = 1000;

    /// <summary>Writes the files of a reply.</summary>
    /// <returns>The reply with where they are, or the refusal to write them.</returns>
    public Reply Save(Reply reply)
    {
        if (reply.Files.Count == 0)
        {
            return reply;
        }

        var arePictures = reply.Files.All(file => file.IsPicture);
        try
        {
            return reply with { Lines = [.. reply.Lines, .. reply.Files.Select(file => $"Written: {Save(file)}")], Files = [] };
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            var problem = arePictures
                ? $"The picture can't be written to {pictures ?? path}: {fault.Message} Choose another folder with --pictures."
                : $"The file can't be written to {path}: {fault.Message} Choose another folder with --files.";
            return arePictures ? reply with { Lines = [.. reply.Lines, problem], Files = [] } : Reply.Refuse(problem);
        }
    }

    private string Save(ReplyFile file)
    {
        var folder = file.IsPicture ? pictures ?? path : path;
        Directory.CreateDirectory(folder);
        for (var number = 1; ; number++)
        {
            var target = Path.Combine(folder, Numbered(Path.GetFileName(file.Name), number));
            try
            {
                using var stream = new FileStream(target, OwnersFile.Options(FileMode.CreateNew));
                stream.Write(file.Content.Span);
                return target;
            }
            catch (IOException) when (File.Exists(target) && number < MostOfAName)
            {
                // The name is taken: the next one is tried.
            }
        }
    }

    private static string Numbered(string name, int number) => number == 1
        ? name
        : string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(name)}-{number}{Path.GetExtension(name)}");
}
