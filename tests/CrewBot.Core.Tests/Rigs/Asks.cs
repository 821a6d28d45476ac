using System.Globalization;
using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CrewBot.Core.Tests.Water;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Questions for rigs: plain ones by hand, and any that a person could ask, at random.</summary>
internal static class Asks
{
    private static readonly TradeKnowledge Knowledge = TradeKnowledge.BuiltIn;

    // What someone may want to do without, every kind of it: lines, wire, metals, baits, presentations, trebles.
    private static readonly string[] Bans =
    [
        Ban.Treble, Ban.LiveBait, .. Knowledge.Lines.Select(line => line.Key), .. Knowledge.LureMaterials.Select(metal => metal.Key),
        .. Knowledge.Baits.Select(bait => bait.Key), .. Knowledge.Presentations.Select(presentation => presentation.Key),
    ];

    public static Gen<Species> AnySpecies { get; } = Gen.OneOf(Knowledge.Species.ToArray());

    public static Gen<Presentation> AnyPresentation { get; } = Gen.OneOf(Knowledge.Presentations.ToArray());

    public static Gen<Length> AnyDepth { get; } = Make.Log(0.3, 150).Select(metres => Length.FromMeters(metres));

    public static Gen<Speed> AnyCurrent { get; } =
        Sometimes(Gen.Double[0, 0.5], otherwise: 0.0).Select(speed => Speed.FromMetersPerSecond(speed));

    private static Gen<RigAsk> Fish { get; } = Gen.Select(
        AnySpecies, Gen.Enum<FishSize>(), Gen.Enum<Mood>(), AnySpecies.List[0, 2], Gen.Int[-5, 5], Gen.Bool,
        (species, size, mood, also, step, stepped) => new RigAsk
        {
            Species = species,
            Size = size,
            Mood = mood,
            AlsoThere = also,
            Step = stepped ? step : 0,
            Depth = species.Depth.Usual,
            Water = Make.Water(4),
            Hole = Length.FromInches(8),
        });

    private static Gen<(Length Depth, Speed Current, Temperature Water, Place Place, Temperature? Air, Length Hole)> Conditions { get; } =
        Gen.Select(
            AnyDepth, AnyCurrent, Gen.Double[0, 8], Gen.Enum<Place>(), Gen.Int[-41, 5], Gen.Double[0.1, 0.3],
            (depth, current, water, place, air, hole) =>
                (depth, current, Make.Water(water), place, air < -40 ? (Temperature?)null : Make.Water(air), Length.FromMeters(hole)));

    private static Gen<IReadOnlySet<string>> Without { get; } =
        Gen.OneOf(Bans).Array[0, 3].Select(bans => (IReadOnlySet<string>)bans.ToHashSet());

    private static Gen<WaterRules?> Rules { get; } = Gen.Select(
        Gen.Int[0, 2], Gen.Int[0, 4], Gen.Int[0, 3], Gen.Bool, Gen.Enum<BaitKind>().Array[0, 4],
        (known, hooks, trebles, leadBanned, baits) => known switch
        {
            0 => null,
            1 => Water() with { LeadBanned = leadBanned, HooksPerLine = hooks > 0 ? hooks : null },
            _ => Water() with
            {
                LeadBanned = leadBanned,
                TreblesPerLine = trebles,
                Lines = 2,
                BarblessOnly = leadBanned,
                Baits = baits.Length > 0 ? baits : null,
            },
        });

    // A crew that fished some ways a lot, some a little and some not at all, with any luck.
    private static Gen<CrewExperience> Experience { get; } = Gen.Select(
        Gen.Select(Gen.Int[0, 60], Gen.Int[0, 80], Make.Log(0.02, 3), (fish, hours, expected) => new WayEvidence(
            new Tally(hours == 0 ? 0 : fish, Duration.FromHours(hours)),
            CatchPosterior.Of(new CatchPrior(new CatchRate(expected), Duration.FromHours(10)), new Tally(hours == 0 ? 0 : fish, Duration.FromHours(hours)))))
            .Array[Knowledge.Presentations.Count],
        Gen.Int[0, 12],
        (ways, month) => new CrewExperience(
            month == 0 ? null : month, Knowledge.Presentations.Zip(ways).ToDictionary(pair => pair.First.Key, pair => pair.Second)));

    private static Gen<LineChoice> AnyLine(Func<LineUse, bool> uses) => Gen.OneOf(
            Knowledge.Lines.Where(line => uses(line.Use)).SelectMany(line => line.Sizes.Select(size => new LineChoice(line, size.Test))).ToArray());

    private static Gen<Tackle> Box { get; } = Gen.Select(
        AnyLine(use => use != LineUse.Bite).Array[0, 6],
        AnyLine(use => use != LineUse.Main).Array[0, 6],
        Gen.Select(AnyPresentation, Gen.Int[0, 100], Gen.Int[0, 100], Gen.Double[0.8, 1.25], (presentation, size, material, factor) => new Lure(
            presentation,
            presentation.Sizes[size % presentation.Sizes.Count].Weight * factor,
            Knowledge.LureMaterials[presentation.Materials[material % presentation.Materials.Count]])).Array[0, 12],
        Gen.OneOf(HookSize.TradeSizes.ToArray()).Array[0, 6],
        (lines, leaders, lures, hooks) => new Tackle { Lines = lines, Leaders = leaders, Lures = lures, Hooks = hooks });

    /// <summary>Any question that a person could put, in any water; not all of them have an answer.</summary>
    public static Gen<RigAsk> Any { get; } = Gen.Select(
        Fish, Conditions, Without, Rules,
        Sometimes(Gen.OneOf(Knowledge.Baits.ToArray()), oneIn: 4),
        Gen.Select(Sometimes(AnyPresentation, oneIn: 2), Sometimes(Experience, oneIn: 2)),
        (fish, conditions, without, rules, bait, chosen) => fish with
        {
            Depth = conditions.Depth,
            Current = conditions.Current,
            Water = conditions.Water,
            Place = conditions.Place,
            Air = conditions.Air,
            Hole = conditions.Hole,
            Without = without,
            Rules = rules,
            Bait = bait,
            Presentation = chosen.Item1,
            Experience = chosen.Item2,
        });

    /// <summary>The same, asked by a crew with a log, and with no presentation settled.</summary>
    public static Gen<RigAsk> AnyOfACrew { get; } =
        Gen.Select(Any, Experience, (ask, experience) => ask with { Presentation = null, Experience = experience });

    /// <summary>The same, asked for the line that is on a reel, were it wire.</summary>
    public static Gen<RigAsk> AnyOnAReel { get; } = Gen.Select(Any, AnyLine(_ => true), (ask, line) => ask with { Mainline = line });

    /// <summary>The same, to be tied from some box: sizes off the usual ladders among what is in it.</summary>
    public static Gen<RigAsk> AnyFromABox { get; } = Gen.Select(Any, Box, (ask, box) => ask with { Tackle = box });

    /// <summary>The same, with the presentation settled, so that two answers can be compared.</summary>
    public static Gen<RigAsk> AnyOfOnePresentation { get; } =
        Gen.Select(Any, AnyPresentation, (ask, presentation) => ask with { Presentation = presentation });

    /// <summary>A plain question: open water at the species' usual depth, typical fish, neutral mood.</summary>
    public static RigAsk For(string species, string? presentation = null) => new()
    {
        Species = Knowledge.Species[species],
        Depth = Knowledge.Species[species].Depth.Usual,
        Water = Make.Water(4),
        Hole = Length.FromInches(8),
        Presentation = presentation is null ? null : Knowledge.Presentations[presentation],
    };

    public static WaterRules Water() => new() { Key = "loon-basin", Name = "Loon Basin", Source = "invented for these tests" };

    public static string Print(RigAsk ask) => string.Create(
        CultureInfo.InvariantCulture,
        $"""
        {ask.Species.Key} {ask.Size} {ask.Mood} also [{string.Join(",", ask.AlsoThere.Select(other => other.Key))}]
        step {ask.Step} presentation {ask.Presentation?.Key} bait {ask.Bait?.Key} without [{string.Join(",", ask.Without)}]
        {ask.Depth.Meters} m {ask.Current.MetersPerSecond} m/s {ask.Water.DegreesCelsius} C {ask.Place} air {ask.Air?.DegreesCelsius}
        {ask.Rules}
        lines {string.Join(", ", ask.Tackle?.Lines.Select(line => $"{line.Material.Key} {line.Test.PoundsForce}") ?? [])} leaders {string.Join(", ", ask.Tackle?.Leaders.Select(line => $"{line.Material.Key} {line.Test.PoundsForce}") ?? [])}
        lures {string.Join(", ", ask.Tackle?.Lures.Select(lure => $"{lure.Presentation.Key} {lure.Weight.Grams} g {lure.Material.Key}") ?? [])} hooks {string.Join(", ", ask.Tackle?.Hooks ?? [])}
        {ask.Experience?.Month} {string.Join(", ", ask.Experience?.Ways.Select(way => $"{way.Key} {way.Value.Tally.Fish}/{way.Value.Tally.LineTime.Hours}") ?? [])}
        """);

    private static Gen<T?> Sometimes<T>(Gen<T> gen, int oneIn)
        where T : class =>
        Gen.Select(Gen.Int[1, oneIn], gen, (throwOfDie, value) => throwOfDie == 1 ? value : null);

    private static Gen<T> Sometimes<T>(Gen<T> gen, T otherwise) =>
        Gen.Select(Gen.Bool, gen, (now, value) => now ? value : otherwise);
}
