using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>Says a rig the way one angler tells another.</summary>
internal static class RigWords
{
    /// <summary>The rig in six lines.</summary>
    public static List<string> LinesOf(RigAsk ask, Rig rig, Showing show) =>
    [
        $"Rod and line: {rig.Outfit.Name}; {LineOf(rig.Tied, show)}.{Better(ask, rig, show)}",
        $"Tie on: {TieOn(rig, show)}.",
        $"Where: {Where(ask, rig, show)}; down in about {Down(rig)}.",
        $"Work: {rig.Presentation.Work[ask.Mood]}",
        $"Bite: {rig.Presentation.Bite}",
        $"Drag: {show.Pulls(rig.Numbers.Drag.Low, rig.Numbers.Drag.High)} on a hand scale; weakest is {rig.Numbers.Weakest.Place}, {show.Pulls(rig.Numbers.Weakest.Low, rig.Numbers.Weakest.High)}.",
    ];

    /// <summary>The rig in a few words, for a list of alternatives.</summary>
    public static string Brief(Rig rig, Showing show)
    {
        var wire = rig.Tied.Leader is { Line.Material: { Use: LineUse.Bite } wireOf } ? $" on {wireOf.Name}" : "";
        return $"{rig.Presentation.Name}, {show.Lure(rig.Lure.Weight)}, {show.Test(rig.Tied.Mainline.Test)} {rig.Tied.Mainline.Material.Name}{wire}";
    }

    /// <summary>Reel to leader: "6 lb (2.7 kg) braid, double uni, 30 in (76 cm) of 6 lb (2.7 kg) fluorocarbon".</summary>
    public static string LineOf(TiedRig tied, Showing show)
    {
        var main = $"{show.Test(tied.Mainline.Test)} {tied.Mainline.Material.Name}, {Showing.Fine(tied.Mainline.Diameter)}";
        if (tied.Leader is not { } leader)
        {
            return $"{main}, straight to the lure";
        }

        var join = PieceOf(tied, HardwareKind.Swivel)?.Name ?? tied.Join!.Name;
        return $"{main}; {join}; {show.Gap(leader.Length)} of {show.Test(leader.Line.Test)} {leader.Line.Material.Name}";
    }

    /// <summary>How far apart the trebles of a dead bait stand; null for anything else.</summary>
    public static HookSpacing? SpacingOf(Rig rig) =>
        rig.Presentation is { SetLine: true, Trebles: 2 } && TwoTrebleRig.Suits(rig.LureLength)
            ? TwoTrebleRig.SpacingFor(rig.LureLength)
            : null;

    /// <summary>What to beware of with some rigs, each thing once, the rules of the water last.</summary>
    public static IReadOnlyList<string> CautionsOf(RigAsk ask, IReadOnlyList<Rig> rigs, Showing show)
    {
        var cautions = new List<string>();
        var texts = new List<string>();
        var open = new List<string>();
        foreach (var rig in rigs)
        {
            foreach (var caution in rig.Cautions)
            {
                var text = caution.Text.ToString(show);
                if (!texts.Contains(text))
                {
                    texts.Add(text);
                    cautions.Add($"{text} ({caution.Trigger.ToString(show)})");
                }
            }

            foreach (var rule in rig.OpenRules)
            {
                if (!open.Contains(rule))
                {
                    open.Add(rule);
                }
            }
        }

        if (open.Count > 0)
        {
            var trigger = ask.Rules is { } rules ? $"not filled in for {rules.Name}" : "no lake given";
            cautions.Add($"Check your regulations on {string.Join(", ", open)}: I don't know them here ({trigger})");
        }

        return cautions;
    }

    /// <summary>Capital letter first.</summary>
    public static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A mood or a size as a word.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum =>
        value.ToString().ToLowerInvariant();

    /// <summary>What is tied on, without the full stop.</summary>
    public static string TieOn(Rig rig, Showing show)
    {
        if (SpacingOf(rig) is { } spacing)
        {
            return $"{show.Gap(rig.LureLength)} {rig.Bait?.Name ?? "dead fish"} held level on two size {rig.Hook} trebles, {show.Gap(spacing.Least)} to {show.Gap(spacing.Most)} apart: front one slides and takes the top of the head, rear one is fixed behind the back fin; {show.Lure(rig.Lure.Weight)} {rig.Lure.Material.Name} sinker";
        }

        var hook = rig.Presentation.Trebles > 0 ? $"size {rig.Hook} treble" : $"size {rig.Hook} hook";
        var fixing = PieceOf(rig.Tied, HardwareKind.Snap) is { } snap
            ? $"{rig.Tied.LureKnot.Name} to a {snap.Name}"
            : rig.Tied.LureKnot.Name;
        var metal = rig.Lure.IsPlainMetal ? $"{rig.Lure.Material.Name} " : "";
        return $"{show.Lure(rig.Lure.Weight)} {metal}{rig.Presentation.Body}, {hook}, {fixing}; {rig.Bait?.Name ?? "no bait"}";
    }

    private static Hardware? PieceOf(TiedRig tied, HardwareKind kind)
    {
        foreach (var piece in tied.Hardware)
        {
            if (piece.Kind == kind)
            {
                return piece;
            }
        }

        return null;
    }

    // Of a box, what to buy next is said in a line of its own.
    private static string Better(RigAsk ask, Rig rig, Showing show) => ask.Tackle is null && rig.BetterMainline is { } line
        ? $" {show.Test(line.Test)} {line.Material.Name} would suit best."
        : "";

    private static string Where(RigAsk ask, Rig rig, Showing show)
    {
        var gap = show.Gap(rig.Height);
        var where = rig.Near switch
        {
            StationNear.Bottom when rig.Height.Meters == 0 => "on the bottom",
            StationNear.Bottom => $"{gap} off bottom",
            StationNear.Fish => $"{gap} above the fish, they feed upwards",
            _ => $"{gap} under the ice",
        };
        var drift = rig.Numbers.Blowback.AtHole.Degrees >= 1
            ? $"; the current leans the line {rig.Numbers.Blowback.AtHole.Degrees:0}° and carries it {show.Depth(rig.Numbers.Blowback.Offset)} off"
            : "";
        return $"{where}; best {ask.Species.Light}{drift}";
    }

    private static string Down(Rig rig)
    {
        var (fast, slow) = (Showing.Span(rig.Numbers.Drop.Fast), Showing.Span(rig.Numbers.Drop.Slow));
        return fast == slow ? fast : $"{fast.Replace(" s", "", StringComparison.Ordinal)}–{slow}";
    }
}
