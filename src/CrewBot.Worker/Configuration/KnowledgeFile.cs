using CrewBot.Core.Knowledge;

namespace CrewBot.Worker.Configuration;

/// <summary>Opens the records that a crew lays over the built-in ones.</summary>
internal static class KnowledgeFile
{
    /// <summary>Reads the knowledge of the trade.</summary>
    /// <param name="path">The crew's own file; null for the built-in records alone.</param>
    /// <returns>The knowledge, or every fault: file, record, field, remedy.</returns>
    public static (TradeKnowledge? Knowledge, IReadOnlyList<string> Faults) Read(string? path)
    {
        if (path is null)
        {
            return (TradeKnowledge.BuiltIn, []);
        }

        try
        {
            using var overlay = File.OpenRead(path);
            var reading = KnowledgeReader.Read(Path.GetFileName(path), overlay);
            return (reading.Knowledge, [.. reading.Faults.Select(fault => fault.ToString())]);
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            return (null, [$"{path}: it can't be read; check what it is and who may read it."]);
        }
    }
}
