namespace CrewBot.Core.Rigs;

/// <summary>The one thing that would help a box most.</summary>
/// <param name="What">What to buy, such as "10 lb braid".</param>
/// <param name="Why">What it makes better, as the end of a sentence.</param>
/// <param name="Also">What a whole rig lacks besides; none when the one thing does.</param>
public sealed record Purchase(FormattableString What, FormattableString Why, IReadOnlyList<FormattableString> Also);
