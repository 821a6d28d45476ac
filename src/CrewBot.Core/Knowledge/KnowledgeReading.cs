namespace CrewBot.Core.Knowledge;

/// <summary>The outcome of reading knowledge files: the knowledge, or every fault found.</summary>
/// <param name="Knowledge">Null when there is any fault.</param>
/// <param name="Faults">Empty when the files are sound.</param>
public sealed record KnowledgeReading(TradeKnowledge? Knowledge, IReadOnlyList<KnowledgeFault> Faults);
