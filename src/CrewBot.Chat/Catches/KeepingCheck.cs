using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>
/// Holds a fish that may be kept beside what the crew has read of its water's rules. It says what to check and where that
/// stands; what is lawful is for the authority to say.
/// </summary>
/// <param name="Checks">What may not be right.</param>
/// <param name="Lines">How the day's bag stands.</param>
internal sealed record KeepingCheck(IReadOnlyList<string> Checks, IReadOnlyList<string> Lines)
{
    private static readonly KeepingCheck Nothing = new([], []);

    public static async Task<KeepingCheck> OfAsync(CrewSession session, LoggedCatch logged, Species species, Request request)
    {
        if (logged is not { Entry: { Kept: not false, WaterId: { } water } entry, Water: { } name })
        {
            return Nothing;
        }

        var rule = KeepRule.Of(await new WaterRepository(session).RulesAsync(water), species.Key);
        if (rule.IsUnknown)
        {
            return entry.Kept is true
                ? Nothing with { Checks = [$"Check sizes and limits for {species.Name}: nobody has filled them in for {name}."] }
                : Nothing;
        }

        var checks = SizeChecks(entry, rule, $"{species.Name} on {name}", request);
        if (entry.Kept is not true || rule.Limit is not { } limit)
        {
            return Nothing with { Checks = checks };
        }

        var kept = await new CatchRepository(session).KeptAsync(
            entry.MemberId, entry.Species, water, PeriodReader.Midnight(entry.CaughtAt, request.Caller.Zone), entry.CaughtAt);
        return kept > limit.Value
            ? Nothing with { Checks = [.. checks, $"Check the limit for {species.Name} on {name}: {limit.Value} a day, {limit.Reference}; this is number {kept} today."] }
            : new KeepingCheck(checks, [$"Kept today: {kept} of {limit.Value} {species.Name} ({limit.Reference})."]);
    }

    private static List<string> SizeChecks(CatchEntry entry, KeepRule rule, string what, Request request)
    {
        var checks = new List<string>();
        if (entry.Length is { } length)
        {
            var shown = CatchWords.Length(length, request.Units);
            if (rule.Minimum is { } least && length.Nanometres < least.Value.Nanometres)
            {
                checks.Add($"Check the minimum for {what}: {CatchWords.Length(least.Value, request.Units)}, {least.Reference}; {shown} is under it.");
            }

            if (rule.Maximum is { } most && length.Nanometres > most.Value.Nanometres)
            {
                checks.Add($"Check the maximum for {what}: {CatchWords.Length(most.Value, request.Units)}, {most.Reference}; {shown} is over it.");
            }
        }

        return checks;
    }
}
