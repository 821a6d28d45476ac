using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Crews;

/// <summary>The options of a crew's settings.</summary>
public sealed class CrewOptions(TradeKnowledge knowledge)
{
    private const int MostLines = 50;
    private const int MostHooks = 100;
    private const int MostKept = 500;

    public CommandOption<UnitSystem> Units { get; } = CommandOption.Optional(
        "units", "The units to speak in", new ChoiceReader<UnitSystem>([("customary", UnitSystem.Customary), ("metric", UnitSystem.Metric)], ("us", UnitSystem.Customary), ("imperial", UnitSystem.Customary)));

    public CommandOption<TimeZoneInfo> Zone { get; } = CommandOption.Optional("zone", "The crew's time zone", new ZoneReader());

    public CommandOption<string> Water { get; } = CommandOption.Optional(
        "water", "A water to add or to change", new NameReader("a water's name, such as Loon Basin"));

    public CommandOption<IReadOnlyList<string>> AlsoCalled { get; } = CommandOption.Optional(
        "also-called", "Other names of the water", new ListReader<string>(new NameReader("a name, such as the basin"), most: 5));

    public CommandOption<(decimal Latitude, decimal Longitude)> At { get; } = CommandOption.Optional(
        "at", "Where the water lies; two decimals are kept", new CoordinatesReader());

    public CommandOption<string> Spot { get; } = CommandOption.Optional(
        "spot", "A named place in the water, for the crew alone", new NameReader("a spot's name, such as north hump"));

    public CommandOption<int> Lines { get; } = CommandOption.Optional(
        "lines", "Lines one angler may fish there", new WholeNumberReader(1, MostLines));

    public CommandOption<int> Hooks { get; } = CommandOption.Optional(
        "hooks", "Hooks allowed on one line, a treble counted as one", new WholeNumberReader(1, MostHooks));

    public CommandOption<int> Trebles { get; } = CommandOption.Optional(
        "trebles", "Trebles allowed on one line", new WholeNumberReader(0, MostHooks));

    public CommandOption<bool> Barbless { get; } = CommandOption.Optional(
        "barbless", "Whether only barbless hooks are allowed", new ChoiceReader<bool>([("yes", true), ("no", false)]));

    public CommandOption<IReadOnlyList<BaitKind>> Baits { get; } = CommandOption.Optional(
        "baits", "Kinds of bait that are allowed",
        new ListReader<BaitKind>(
            new ChoiceReader<BaitKind>(
            [
                ("live fish", BaitKind.LiveFish), ("dead fish", BaitKind.DeadFish), ("cut fish", BaitKind.CutFish),
                ("insects", BaitKind.Insect), ("dough", BaitKind.Dough), ("soft lures", BaitKind.Soft),
            ]),
            most: 6));

    public CommandOption<bool> Lead { get; } = CommandOption.Optional(
        "lead", "Whether lead is allowed", new ChoiceReader<bool>([("allowed", true), ("banned", false)]));

    public CommandOption<Species> Species { get; } = CommandOption.Optional(
        "species", "The fish that a size or limit is for", new RecordReader<Species>(knowledge.Species, "a species"));

    public CommandOption<ExactLength> Minimum { get; } = CommandOption.Optional(
        "minimum", "The shortest that may be kept", new ExactLengthReader(QuantityReaders.FishLength));

    public CommandOption<ExactLength> Maximum { get; } = CommandOption.Optional(
        "maximum", "The longest that may be kept", new ExactLengthReader(QuantityReaders.FishLength));

    public CommandOption<int> Limit { get; } = CommandOption.Optional(
        "limit", "How many one angler may keep a day", new WholeNumberReader(0, MostKept));

    public CommandOption<string> Reference { get; } = CommandOption.Optional(
        "reference", "Where the authority says so", new NameReader("a page or an address, such as booklet 2027 p. 12"));

    public CommandOption<IReadOnlyList<string>> Forget { get; } = CommandOption.Optional(
        "forget", "Rules of the water that are unknown again",
        new ListReader<string>(new ChoiceReader<string>([.. RulesOfWater.All.Concat(RulesOfWater.Keeping).Select(rule => (rule, rule))]), most: 9));

    public CommandOption<Person> Person { get; } = CommandOption.Optional("person", "Somebody to give a role", new PersonReader());

    public CommandOption<CrewRole> Role { get; } = CommandOption.Optional(
        "role", "What they may do", new ChoiceReader<CrewRole>(
            [("member", CrewRole.Member), ("steward", CrewRole.Steward), ("owner", CrewRole.Owner)]));

    public CommandOption<string> Purpose { get; } = CommandOption.Optional(
        "for", "What a channel is for", new ChoiceReader<string>(
            [("catches", "catch"), ("derby", "derby"), ("ice", "ice"), ("trips", "trip"), ("contact", "contact")]));

    public CommandOption<string> Channel { get; } = CommandOption.Optional("channel", "The channel", new ChannelReader());

    public CommandOption<string> ContactRole { get; } = CommandOption.Optional(
        "contact-role", "Who is called when a party is overdue", new RoleReader());

    public CommandOption<string> Emergency { get; } = CommandOption.Optional(
        "emergency", "The emergency number where you fish", new NameReader("a number to call, such as 112"));

    /// <summary>Everything a crew sets.</summary>
    public IReadOnlyList<CommandOption> All =>
    [
        Units, Zone, Water, AlsoCalled, At, Spot, Lines, Hooks, Trebles, Barbless, Baits, Lead,
        Species, Minimum, Maximum, Limit, Reference, Forget, Person, Role, Purpose, Channel, ContactRole, Emergency,
    ];
}
