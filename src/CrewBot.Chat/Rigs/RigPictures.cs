using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Pictures;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>Puts a rig into the words of a diagram.</summary>
internal static class RigPictures
{
    /// <summary>A planned rig.</summary>
    public static RigPicture Of(RigAsk ask, Rig rig, Request request)
    {
        var title = $"{RigWords.Sentence(ask.Species.Name)}, {RigWords.Word(ask.Mood)}: {rig.Presentation.Name}";
        return new RigPicture(
            $"{title}, from the rod down: {Spoken(PartsOf(rig, request.Show))}. {RigWords.Sentence(Hung(ask, rig, request.Show).Label)} in {request.Show.Depth(ask.Depth)} of water.",
            title, [new PicturedRig(null, PartsOf(rig, request.Show))], RulerFor(request), WaterOf(ask, [rig], request.Show));
    }

    /// <summary>Two rigs that work together.</summary>
    public static RigPicture Of(RigAsk ask, RigPair pair, Request request)
    {
        var show = request.Show;
        var title = $"{RigWords.Sentence(ask.Species.Name)}, {RigWords.Word(ask.Mood)}: two lines, {show.Gap(pair.Spacing)} apart";
        List<(string Job, Rig Rig)> rigs = [("Caller", pair.Caller)];
        if (pair.Sitter is { } sitter)
        {
            rigs.Add(("Sitter", sitter));
        }

        var told = string.Join(" ", rigs.Select(line => $"{line.Job}, from the rod down: {Spoken(PartsOf(line.Rig, show))}. {RigWords.Sentence(Hung(ask, line.Rig, show).Label)}."));
        return new RigPicture(
            $"{title}. {told}", title, [.. rigs.Select(line => new PicturedRig(line.Job, PartsOf(line.Rig, show)))],
            RulerFor(request), WaterOf(ask, [.. rigs.Select(line => line.Rig)], show));
    }

    /// <summary>A rig that someone tied, with where it gives way.</summary>
    public static RigPicture Of(TiedRig tied, RigVerdict verdict, Request request)
    {
        var title = verdict.Faults.Count switch
        {
            0 => "Holds together",
            1 => "One thing wrong with it",
            var many => $"{many} things wrong with it",
        };
        var parts = PartsOf(tied, verdict.Weakest, request.Show);
        parts.Insert(0, new PicturedPart(PartKind.Rod, "reel"));
        if (tied.Lure is { } lure)
        {
            var hung = new PicturedPart(SmallKindOf(lure.Presentation), $"{request.Show.Lure(lure.Weight)} {lure.Presentation.Name}");
            if (hung.Kind is PartKind.Shot)
            {
                PutOnLeader(parts, hung);
            }
            else
            {
                parts.Add(hung);
            }
        }

        if (tied.Hook is { } hook)
        {
            parts.Add(Marked(new PicturedPart(PartKind.Hook, $"{hook.Name} hook"), RigStrength.HookBending, verdict.Weakest, request.Show));
        }

        List<string> notes = [.. verdict.Faults.Select(fault => fault.What.ToString(request.Show))];
        var told = string.Concat(notes.Select(note => $" {note}"));
        return new RigPicture(
            $"{title}, from the reel down: {Spoken(parts.Skip(1))}.{told}", title, [new PicturedRig(null, parts)], RulerFor(request), Water: null)
        {
            Notes = notes,
        };
    }

    private static List<PicturedPart> PartsOf(Rig rig, Showing show)
    {
        var parts = PartsOf(rig.Tied, rig.Numbers.Weakest, show);
        parts.Insert(0, new PicturedPart(PartKind.Rod, rig.Outfit.Name));
        var metal = rig.Lure.IsPlainMetal ? $"{rig.Lure.Material.Name} " : "";
        var lure = $"{show.Lure(rig.Lure.Weight)} {metal}{rig.Presentation.Body}";
        var hook = rig.Presentation.Trebles switch
        {
            0 => $"size {rig.Hook} hook",
            1 => $"size {rig.Hook} treble",
            var trebles => $"{trebles} size {rig.Hook} trebles",
        };
        PicturedPart Hooked(PicturedPart part) => Marked(part, RigStrength.HookBending, rig.Numbers.Weakest, show);
        switch (KindOf(rig.Presentation))
        {
            case PartKind.Shot:
                PutOnLeader(parts, new(PartKind.Shot, lure));
                parts.Add(Hooked(new(PartKind.Hook, hook)));
                break;
            case PartKind.DeadFish:
                PutOnLeader(parts, new(PartKind.Sinker, lure));
                parts.Add(Hooked(new(PartKind.DeadFish, $"{show.Gap(rig.LureLength)} {rig.Bait?.Name ?? "dead fish"}, level on {hook}") { Length = rig.LureLength }));
                break;
            case var kind:
                parts.Add(Hooked(new(kind, $"{lure}, {show.Gap(rig.LureLength)}; {hook}") { Length = rig.LureLength }));
                break;
        }

        if (rig.Bait is { } bait && KindOf(rig.Presentation) != PartKind.DeadFish)
        {
            parts.Add(new PicturedPart(PartKind.Bait, bait.Name));
        }

        return parts;
    }

    // A weight that is no lure sits on the leader, above what is tied at its end.
    private static void PutOnLeader(List<PicturedPart> parts, PicturedPart weight) =>
        parts.Insert(parts.FindLastIndex(part => part.Kind == PartKind.Knot), weight);

    // Reel to the knot, snap or crimp above the lure.
    private static List<PicturedPart> PartsOf(TiedRig tied, WeakestLink weakest, Showing show)
    {
        var parts = new List<PicturedPart>
        {
            new(KindOf(tied.Mainline.Material), $"{show.Test(tied.Mainline.Test)} {tied.Mainline.Material.Name}, {Showing.Fine(tied.Mainline.Diameter)}"),
        };
        if (tied.Leader is { } leader)
        {
            var sides = (string[])[RigStrength.JoinSide(tied.Mainline), RigStrength.JoinSide(leader.Line)];
            var join = new PicturedPart(PartKind.Knot, tied.Join!.Name);
            parts.Add(sides.Contains(weakest.Place) ? Marked(join, weakest.Place, weakest, show) : join);
            parts.AddRange(Metal(tied, HardwareKind.Swivel, PartKind.Swivel, weakest, show));
            parts.Add(new PicturedPart(KindOf(leader.Line.Material), $"{show.Gap(leader.Length)} of {show.Test(leader.Line.Test)} {leader.Line.Material.Name}")
            {
                Length = leader.Length,
            });
        }
        else
        {
            parts.AddRange(Metal(tied, HardwareKind.Swivel, PartKind.Swivel, weakest, show));
        }

        parts.Add(Marked(new PicturedPart(PartKind.Knot, tied.LureKnot.Name), RigStrength.LureKnot, weakest, show));
        parts.AddRange(Metal(tied, HardwareKind.Snap, PartKind.Snap, weakest, show));
        parts.AddRange(Metal(tied, HardwareKind.SplitRing, PartKind.SplitRing, weakest, show));
        return parts;
    }

    private static IEnumerable<PicturedPart> Metal(TiedRig tied, HardwareKind kind, PartKind part, WeakestLink weakest, Showing show) => tied.Hardware
        .Where(piece => piece.Kind == kind)
        .Select(piece => Marked(new PicturedPart(part, piece.Name), RigStrength.PlaceOf(piece), weakest, show));

    private static PicturedPart Marked(PicturedPart part, string place, WeakestLink weakest, Showing show) =>
        place == weakest.Place ? part with { Weakest = show.Pulls(weakest.Low, weakest.High) } : part;

    private static PartKind KindOf(LineMaterial material) => material switch
    {
        { Use: LineUse.Bite } => PartKind.Wire,
        { Key: "braid" } => PartKind.Braid,
        _ => PartKind.Strand,
    };

    private static PartKind KindOf(Presentation presentation) => presentation switch
    {
        { SetLine: true } => PartKind.DeadFish,
        { Trebles: 0, Snap: false, Step: 1 } => PartKind.Shot,
        { Trebles: 0 } => PartKind.Jig,
        { Hooks: 1 } => PartKind.Spoon,
        _ => PartKind.Swimmer,
    };

    // What someone tied has no known length: its sign says only what hangs there.
    private static PartKind SmallKindOf(Presentation presentation) =>
        KindOf(presentation) is PartKind.Shot ? PartKind.Shot : PartKind.Sinker;

    private static WaterColumn WaterOf(RigAsk ask, IReadOnlyList<Rig> rigs, Showing show) =>
        new(ask.Depth, show.Depth(ask.Depth), [.. rigs.Select(rig => Hung(ask, rig, show))]);

    private static HungLure Hung(RigAsk ask, Rig rig, Showing show) => rig.Near switch
    {
        StationNear.Bottom when rig.Height.Meters == 0 => new(ask.Depth, "on the bottom"),
        StationNear.Bottom => new(ask.Depth - rig.Height, $"{show.Gap(rig.Height)} off bottom"),
        // Nobody knows where the fish are: half-way down stands for wherever the sonar shows them.
        StationNear.Fish => new(ask.Depth / 2, $"{show.Gap(rig.Height)} above the fish, wherever they are"),
        _ => new(Length.FromMeters(Math.Min(rig.Height.Meters, ask.Depth.Meters)), $"{show.Gap(rig.Height)} under the ice"),
    };

    private static RulerUnit RulerFor(Request request) =>
        request.Units == CrewUnits.Customary ? RulerUnit.Inches : RulerUnit.Centimetres;

    private static string Spoken(IEnumerable<PicturedPart> parts) =>
        string.Join("; ", parts.Select(part => part.Weakest is { } pull ? $"{part.Label} (weakest, {pull})" : part.Label));
}
