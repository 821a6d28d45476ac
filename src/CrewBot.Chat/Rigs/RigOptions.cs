using CrewBot.Chat.Commands;
using CrewBot.Chat.Lines;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>The options that rig commands share, each declared once.</summary>
public sealed class RigOptions(TradeKnowledge knowledge)
{
    /// <summary>The most lines anyone is asked to plan for.</summary>
    public const int MostLines = 10;

    /// <summary>The most holes a crew is spread over.</summary>
    public const int MostHoles = 40;

    public CommandOption<string> Ask { get; } = CommandOption.Optional(
        "ask", "All of it in your own words: walleye 24ft negative in the open -12C",
        new FreeTextReader("a few words, such as walleye 24ft negative"));

    public CommandOption<Species> Species { get; } = CommandOption.Required(
        "species", "The fish to rig for", new RecordReader<Species>(knowledge.Species, "a species"));

    public CommandOption<IReadOnlyList<Species>> AlsoThere { get; } = CommandOption.Optional(
        "also-there", "Other fish likely to bite, such as pike",
        new ListReader<Species>(new RecordReader<Species>(knowledge.Species, "a species"), most: 5));

    public CommandOption<Length> Depth { get; } = CommandOption.Optional(
        "depth", "Depth of the water under the ice", QuantityReaders.Depth);

    public CommandOption<Mood> Mood { get; } = CommandOption.Optional("mood", "How willing the fish are", MoodWords.Reader);

    public CommandOption<FishSize> Size { get; } = CommandOption.Optional("size", "How big a fish to be ready for", Sizes);

    public CommandOption<Bait> Bait { get; } = CommandOption.Optional(
        "bait", "The bait to use", new RecordReader<Bait>(knowledge.Baits, "a bait"));

    public CommandOption<Place> Place { get; } = CommandOption.Optional("place", "Where you sit", Places);

    public CommandOption<Temperature> Air { get; } = CommandOption.Optional("air", "Air temperature", QuantityReaders.Air);

    public CommandOption<Temperature> Water { get; } = CommandOption.Optional("water", "Water temperature", QuantityReaders.Water);

    public CommandOption<Speed> Current { get; } = CommandOption.Optional("current", "Current under the ice", QuantityReaders.Current);

    public CommandOption<int> Lines { get; } = CommandOption.Optional(
        "lines", "Lines you may fish: your regulations say", new WholeNumberReader(1, MostLines));

    public CommandOption<IReadOnlySet<string>> Without { get; } = CommandOption.Optional(
        "without", "What to do without: lead, braid, trebles, live bait", new WithoutReader(knowledge));

    public CommandOption<Length> Hole { get; } = CommandOption.Optional("hole", "Diameter of the hole", QuantityReaders.Hole);

    public CommandOption<WaterRules> Lake { get; } = CommandOption.Optional(
        "lake", "A water whose rules the crew has filled in", new WaterReader(knowledge.Waters));

    public CommandOption<Presentation> Presentation { get; } = CommandOption.Optional(
        "presentation", "How to fish it, if you have decided", new RecordReader<Presentation>(knowledge.Presentations, "a presentation"));

    public CommandOption<int> Step { get; } = CommandOption.Optional(
        "step", "Sizes heavier (or, below zero, lighter) than usual", new WholeNumberReader(-5, 5));

    public CommandOption<LineSpec> Mainline { get; } = CommandOption.Optional(
        "mainline", "The line on your reel, to plan for it, such as nylon 4lb", new LineSpecReader(knowledge, needsTest: true));

    public CommandOption<bool> From { get; } = CommandOption.Optional(
        "from", "Plan with what your box holds and nothing else, and name what to buy next", new ChoiceReader<bool>([("box", true)]));

    public CommandOption<int> Holes { get; } = CommandOption.Optional(
        "holes", "How many holes the crew fishes", new WholeNumberReader(1, MostHoles));

    /// <summary>Everything that describes a rig to plan.</summary>
    public IReadOnlyList<CommandOption> ForPlanning =>
    [
        Species, Ask, AlsoThere, Depth, Mood, Size, Bait, Place, Air, Water, Current, Lines, Without, Hole, Lake,
        Presentation, Step,
    ];

    internal static ChoiceReader<FishSize> Sizes { get; } = new(
        [("small", FishSize.Small), ("typical", FishSize.Typical), ("large", FishSize.Large), ("trophy", FishSize.Trophy)],
        [("average", FishSize.Typical), ("eater", FishSize.Typical), ("big", FishSize.Large), ("giant", FishSize.Trophy), ("huge", FishSize.Trophy), ("massive", FishSize.Trophy), ("monster", FishSize.Trophy)]);

    internal static ChoiceReader<Place> Places { get; } = new(
        [("open", Core.Rigs.Place.Open), ("shelter", Core.Rigs.Place.Shelter)],
        [
            ("in the open", Core.Rigs.Place.Open), ("outside", Core.Rigs.Place.Open), ("on the ice", Core.Rigs.Place.Open),
            ("inside", Core.Rigs.Place.Shelter), ("in the shelter", Core.Rigs.Place.Shelter), ("shack", Core.Rigs.Place.Shelter),
            ("hut", Core.Rigs.Place.Shelter), ("tent", Core.Rigs.Place.Shelter), ("heated", Core.Rigs.Place.Shelter), ("hub", Core.Rigs.Place.Shelter), ("shanty", Core.Rigs.Place.Shelter),
            ("ice house", Core.Rigs.Place.Shelter),
        ]);
}
