namespace CrewBot.Core.Knowledge;

/// <summary>A field of a record that does not fit.</summary>
/// <param name="Field">The field, as a path.</param>
/// <param name="Remedy">What is wrong and what to write instead.</param>
/// <param name="Against">
/// Key of the record of the same section that it clashes with; when one of the two is a crew's, that one is at fault.
/// </param>
internal readonly record struct Misfit(string Field, string Remedy, string? Against = null);
