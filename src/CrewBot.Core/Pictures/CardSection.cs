namespace CrewBot.Core.Pictures;

/// <summary>A part of a card.</summary>
/// <param name="Heading">What it is about.</param>
/// <param name="Lines">One thing each.</param>
public sealed record CardSection(string Heading, IReadOnlyList<string> Lines)
{
    /// <summary>Bad news: its heading is a warning.</summary>
    public bool IsBad { get; init; }
}
