namespace CrewBot.Core.Ice.Posts;

/// <summary>The part of a sentence that says one thing.</summary>
/// <param name="Start">Its first token.</param>
/// <param name="End">After its last token.</param>
internal readonly record struct PostClause(int Start, int End)
{
    public bool Has(int at) => at >= Start && at < End;
}
