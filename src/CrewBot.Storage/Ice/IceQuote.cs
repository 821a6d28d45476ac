namespace CrewBot.Storage.Ice;

/// <summary>Where a report that somebody passed on comes from.</summary>
/// <param name="Author">Who wrote it.</param>
/// <param name="Link">Where it stands; null when nobody said.</param>
/// <param name="Text">What it says; null when nobody said.</param>
public sealed record IceQuote(string Author, string? Link, string? Text);
