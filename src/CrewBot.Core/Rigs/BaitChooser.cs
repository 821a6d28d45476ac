using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>Chooses what goes on the hook.</summary>
internal sealed class BaitChooser(TradeKnowledge knowledge)
{
    public Choice<ChosenBait> Choose(RigAsk ask, Presentation presentation)
    {
        if (ask.Bait is { } wanted)
        {
            return wanted.Serves.Contains(presentation.Key)
                ? IsAllowed(ask, wanted)
                    ? new ChosenBait(wanted, $"{wanted.Name}, as you asked. {wanted.Hooking}")
                    : (FormattableString)$"{wanted.Name} is ruled out"
                : (FormattableString)$"{wanted.Name} does not go on a {presentation.Name}";
        }

        if (FirstFor(ask, presentation) is { } bait)
        {
            return new ChosenBait(bait, $"What {ask.Species.Name} take first on a {presentation.Name}: {bait.Name}. {bait.Hooking}");
        }

        return IsBaitFishing(presentation)
            ? (FormattableString)$"a {presentation.Name} needs bait, and every bait for {ask.Species.Name} is ruled out"
            : new ChosenBait(null, $"No bait: a {presentation.Name} is fished clean for {ask.Species.Name}.");
    }

    private Bait? FirstFor(RigAsk ask, Presentation presentation)
    {
        foreach (var key in ask.Species.Baits)
        {
            var bait = knowledge.Baits[key];
            if (bait.Serves.Contains(presentation.Key) && IsAllowed(ask, bait))
            {
                return bait;
            }
        }

        return null;
    }

    private static bool IsBaitFishing(Presentation presentation) => presentation.Step == 1 || presentation.SetLine;

    // Rules of the water speak of natural bait; soft plastic is a lure to them.
    private static bool IsAllowed(RigAsk ask, Bait bait) =>
        !Ban.Forbids(ask.Without, bait)
        && (ask.Rules?.Baits is not { } allowed || bait.Kind == BaitKind.Soft || allowed.Contains(bait.Kind));
}
