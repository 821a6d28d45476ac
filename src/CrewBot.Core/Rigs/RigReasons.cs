using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>Says why a rig is fished the way it is, and where.</summary>
internal static class RigReasons
{
    public static FormattableString Presentation(RigAsk ask, Presentation presentation)
    {
        var mood = ask.Mood.ToString().ToLowerInvariant();
        var order = ask.Species.Presentations[ask.Mood].ToList().IndexOf(presentation.Key);
        return order switch
        {
            0 => $"A {presentation.Name} is the first thing to show {mood} {ask.Species.Name}; it calls {presentation.Calls}.",
            > 0 => $"A {presentation.Name} is number {order + 1} for {mood} {ask.Species.Name}; it calls {presentation.Calls}.",
            _ => (FormattableString)$"A {presentation.Name}, as you asked; not a usual choice for {mood} {ask.Species.Name}.",
        };
    }

    /// <summary>What the crew's own fishing says of it; nothing when it says nothing.</summary>
    public static IEnumerable<Reason> Crew(RigAsk ask, Presentation presentation, TradeKnowledge knowledge)
    {
        if (ask.Experience?.Told(presentation.Key) is not { } told)
        {
            yield break;
        }

        yield return new("your crew", ask.OutfishedBy(presentation) is { } other
            ? $"{told}: likely more than a {knowledge.Presentations[other].Name} gives, so it goes ahead of that."
            : (FormattableString)$"{told}.");
    }

    public static FormattableString Where(RigAsk ask, Rig rig)
    {
        var mood = ask.Mood.ToString().ToLowerInvariant();
        return rig.Near switch
        {
            StationNear.Fish => $"{rig.Height:gap} above {mood} {ask.Species.Name}: they look and feed upwards.",
            StationNear.Ice => (FormattableString)$"{rig.Height:gap} under the ice is where {mood} {ask.Species.Name} cruise.",
            _ when rig.Height.Meters == 0 => $"On the bottom is where {mood} {ask.Species.Name} find it.",
            _ => $"{rig.Height:gap} off bottom is where {mood} {ask.Species.Name} take it.",
        };
    }
}
