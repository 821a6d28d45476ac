namespace CrewBot.Core.Ice.Posts;

/// <summary>A place named in a sentence.</summary>
/// <param name="Start">Its first token, the preposition if there is one.</param>
/// <param name="End">After its last token.</param>
/// <param name="Name">As written, without article and preposition.</param>
internal readonly record struct PostPlace(int Start, int End, string Name);
