using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Plans a rig: makes candidates from the trade's knowledge, keeps what the conditions allow, best first.</summary>
/// <param name="knowledge">What the trade knows.</param>
/// <remarks>
/// Pure: the same question gets the same plan. Deeper water or more current never gives a lighter lure of the same
/// presentation, a more negative mood never a larger one, a heavier fish never a lighter line.
/// </remarks>
public sealed class RigPlanner(TradeKnowledge knowledge)
{
    private const int MostAlternatives = 2;

    private readonly LineChooser _lines = new(knowledge);
    private readonly LureChooser _lures = new(knowledge);
    private readonly BaitChooser _baits = new(knowledge);
    private readonly TackleChooser _tackle = new(new(knowledge), new(knowledge));

    /// <summary>Plans.</summary>
    /// <param name="ask">What is asked; its ranges are those of <see cref="RigAsk"/>.</param>
    /// <returns>A plan with up to two alternatives, or what stands in the way.</returns>
    public RigPlanning Plan(RigAsk ask)
    {
        var rigs = new List<Rig>();
        FormattableString? obstacle = null;
        foreach (var presentation in Candidates(ask))
        {
            var choice = Build(ask, presentation, biteLeader: ask.Species.Teeth == Teeth.Cuts);
            obstacle ??= choice.Obstacle;
            if (choice.Made is not { } rig)
            {
                continue;
            }

            rigs.Add(rig);
            if (rigs.Count == 1 && ThreatensLeader(ask) && Build(ask, presentation, biteLeader: true).Made is { } wired)
            {
                rigs.Add(wired);
            }

            if (rigs.Count > MostAlternatives)
            {
                break;
            }
        }

        return rigs.Count > 0
            ? new RigPlanning { Plan = new RigPlan(rigs[0], rigs[1..]) }
            : new RigPlanning { Obstacle = obstacle ?? NothingSuits(ask) };
    }

    /// <summary>Every rig that suits, the best first, whatever there is in a box.</summary>
    internal IReadOnlyList<Rig> Suited(RigAsk ask) =>
        [.. Candidates(ask).Select(presentation => RigOf(ask with { Tackle = null }, presentation)).OfType<Rig>()];

    /// <summary>The rig of one presentation; null when something stands in its way.</summary>
    internal Rig? RigOf(RigAsk ask, Presentation presentation) => Build(ask, presentation, biteLeader: ask.Species.Teeth == Teeth.Cuts).Made;

    /// <summary>What suits the species in this mood, best first by trade and crew; or just what was asked for.</summary>
    private IEnumerable<Presentation> Candidates(RigAsk ask)
    {
        if (ask.Presentation is { } wanted)
        {
            return wanted.Work.ContainsKey(ask.Mood) && wanted.StartWeight.ContainsKey(ask.Species.Class) ? [wanted] : [];
        }

        var shown = ask.Species.Presentations[ask.Mood];
        return (ask.Experience?.Order(shown) ?? shown).Select(key => knowledge.Presentations[key]);
    }

    private Choice<Rig> Build(RigAsk ask, Presentation presentation, bool biteLeader)
    {
        if (RuledOut(ask, presentation) is { } rule)
        {
            return rule;
        }

        var lines = _lines.Choose(ask, presentation, biteLeader);
        if (lines.Made is not { } parts)
        {
            return lines.Obstacle!;
        }

        if ((ask.Tackle ?? (ask.Mainline is { } reel ? _lines.Around(reel) : null)) is { } own)
        {
            if (_tackle.NearestLines(own, ask, presentation, biteLeader, parts) is not { } owned)
            {
                return NoLines(ask, presentation, parts.Tied.Mainline);
            }

            parts = owned;
        }

        var lure = _lures.Choose(ask, presentation, parts.Tied.Mainline.InWater);
        if (lure.Made is not { } chosen)
        {
            return lure.Obstacle!;
        }

        var bait = _baits.Choose(ask, presentation);
        return bait.Made is { } morsel ? Hooked(ask, presentation, parts, chosen, morsel) : bait.Obstacle!;
    }

    private static FormattableString NoLines(RigAsk ask, Presentation presentation, LineChoice suited) => (ask.Tackle, ask.Mainline) switch
    {
        (null, { } reel) when reel.Material.Use == LineUse.Bite => $"{reel.Material.Name} is for leaders, not for a reel",
        (null, { } reel) when ask.Without.Contains(reel.Material.Key) => $"{reel.Material.Name} is on the reel and ruled out",
        (null, { } reel) when !Strain.StandsIn(reel.Test, suited.Test) =>
            $"{reel.Test:test} {reel.Material.Name} is too {(reel.Test < suited.Test ? "light" : "heavy")} for a {presentation.Name}; {suited.Test:test} {suited.Material.Name} suits",
        (null, { } reel) =>
            $"no leader and knot on {reel.Test:test} {reel.Material.Name} hold a {ask.Size.ToString().ToLowerInvariant()} {ask.Species.Name}; {suited.Test:test} {suited.Material.Name} suits",
        _ => $"the box holds no line and leader for a {presentation.Name}",
    };

    private Choice<Rig> Hooked(RigAsk ask, Presentation presentation, RigParts parts, ChosenLure suited, ChosenBait bait)
    {
        var chosen = ask.Tackle is { } box ? _tackle.NearestLure(box, ask, presentation, parts, suited) : suited;
        if (chosen is null)
        {
            return (FormattableString)$"the box holds no {presentation.Name} that will do";
        }

        var hook = HookChooser.Choose(ask, presentation, chosen.Size);
        if (ask.Tackle is not { } own || chosen.Size.Hook is not null)
        {
            return Assemble(ask, presentation, parts, chosen, bait, hook);
        }

        return _tackle.NearestHook(own, ask, hook) is { } owned
            ? Assemble(ask, presentation, parts, chosen, bait, owned)
            : (FormattableString)$"the box holds no hook for {ask.Species.Name}";
    }

    private Rig Assemble(RigAsk ask, Presentation presentation, RigParts parts, ChosenLure chosen, ChosenBait bait, HookSize hook)
    {
        var tied = parts.Tied with
        {
            Lure = chosen.Lure,
            Hook = knowledge.Hooks.Find(rating => rating.Size == hook),
        };
        return new Rig(new RigDetails(ask, knowledge, parts.Why, chosen, bait))
        {
            Presentation = presentation,
            Outfit = parts.Outfit,
            Tied = tied,
            Lure = chosen.Lure,
            LureLength = chosen.Size.Length,
            Near = presentation.OffBottom is null ? ask.Species.Station.Near : StationNear.Bottom,
            Height = HeightIn(ask, presentation),
            Hook = hook,
            IsHeaviest = chosen.IsHeaviest,
            Bait = bait.Bait,
            OpenRules = OpenRules.For(ask.Rules, presentation, chosen.Lure.Material, bait.Bait),
        };
    }

    // What is usual off the bottom of a deep basin would stick out of a shallow bay.
    private static Length HeightIn(RigAsk ask, Presentation presentation)
    {
        var usual = (presentation.OffBottom ?? ask.Species.Station.Gap)[ask.Mood];
        var most = ask.Depth / 2;
        return usual > most ? most : usual;
    }

    private static FormattableString? RuledOut(RigAsk ask, Presentation presentation)
    {
        if (ask.Without.Contains(presentation.Key))
        {
            return $"a {presentation.Name} is ruled out";
        }

        if (presentation.Trebles > 0 && ask.Without.Contains(Ban.Treble))
        {
            return $"a {presentation.Name} carries trebles, which are ruled out";
        }

        if (presentation.Trebles > ask.Rules?.TreblesPerLine)
        {
            return $"a {presentation.Name} carries {presentation.Trebles} trebles; {ask.Rules.Name} allows {ask.Rules.TreblesPerLine}";
        }

        return presentation.Hooks > ask.Rules?.HooksPerLine
            ? $"a {presentation.Name} carries {presentation.Hooks} hooks; {ask.Rules.Name} allows {ask.Rules.HooksPerLine}"
            : (FormattableString?)null;
    }

    private static bool ThreatensLeader(RigAsk ask) =>
        ask.Species.Teeth != Teeth.Cuts && ask.AlsoThere.Any(other => other.Teeth == Teeth.Cuts);

    private static FormattableString NothingSuits(RigAsk ask) => ask.Presentation is { } wanted
        ? $"a {wanted.Name} does not suit {ask.Mood.ToString().ToLowerInvariant()} {ask.Species.Name}"
        : (FormattableString)$"nothing I know suits {ask.Mood.ToString().ToLowerInvariant()} {ask.Species.Name}";
}
