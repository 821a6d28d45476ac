namespace CrewBot.Core.Knowledge;

/// <summary>What must hold of the knowledge as a whole.</summary>
internal static class KnowledgeRules
{
    /// <summary>Checks ranges and references.</summary>
    /// <param name="knowledge">All records, each readable by itself.</param>
    /// <param name="fileOf">Names the file that had the last word on a record, given section and key.</param>
    public static IEnumerable<KnowledgeFault> Check(TradeKnowledge knowledge, Func<string, string, string> fileOf)
    {
        _ = knowledge;
        _ = fileOf;
        return [];
    }
}
