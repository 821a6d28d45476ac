using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>The crew that a person belongs to who writes outside of any.</summary>
/// <param name="Guild">Its guild.</param>
/// <param name="Member">The person in it.</param>
/// <param name="IsOneOfSeveral">They belong to others too: this is the one they wrote in last.</param>
internal sealed record HomeCrew(Snowflake Guild, Member Member, bool IsOneOfSeveral);
