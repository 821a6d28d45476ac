using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>The options that ice commands share, each declared once.</summary>
public sealed class IceOptions(TradeKnowledge knowledge)
{
    /// <summary>How much of a post is quoted.</summary>
    public const int LongestQuote = 300;

    private const int LongestNote = 500;
    private const int LongestPost = 4000;
    private const int LongestReason = 200;
    private const int MostHazards = 5;
    private const int MostPeople = 100;

    private static readonly ExactLengthReader Thickness = new(IceReaders.Thickness);
    private static readonly ExactLengthReader Cover = new(IceReaders.Cover);

    public CommandOption<WaterRules> Water { get; } = CommandOption.Required("water", "Which water", new WaterReader(knowledge.Waters));

    public CommandOption<string> Ask { get; } = CommandOption.Optional(
        "ask", "All of it in your own words: Loon Basin north bay 5in clear 2in white 10 min ago",
        new FreeTextReader("Loon Basin north bay 5in clear 2in white"));

    public CommandOption<string> Spot { get; } = CommandOption.Optional(
        "spot", "Where in the water, by the name your crew uses", new NameReader("a spot's name, such as north bay"));

    public CommandOption<IReadOnlyList<ExactLength>> Holes { get; } = CommandOption.Optional(
        "holes", "A walk-out, hole by hole in order: 4 5 5 3in", new HolesReader());

    public CommandOption<string> From { get; } = CommandOption.Optional(
        "from", "Where the walk-out starts", new NameReader("a spot's name, such as landing"));

    public CommandOption<ExactLength> Clear { get; } = CommandOption.Optional("clear", "New clear ice, with its unit", Thickness);

    public CommandOption<ExactLength> White { get; } = CommandOption.Optional("white", "White ice, with its unit", Thickness);

    public CommandOption<ExactLength> Total { get; } = CommandOption.Optional("total", "All solid ice, with its unit", Thickness);

    public CommandOption<ExactLength> Snow { get; } = CommandOption.Optional("snow", "Snow on top, with its unit", Cover);

    public CommandOption<ExactLength> Slush { get; } = CommandOption.Optional("slush", "Slush on top, with its unit", Cover);

    public CommandOption<IceKind> Kind { get; } = CommandOption.Optional(
        "kind", "What the ice is, where you gave one thickness", new ChoiceReader<IceKind>(IceWords.Kinds, IceWords.OtherKinds));

    public CommandOption<IReadOnlyList<IceHazard>> Hazard { get; } = CommandOption.Optional(
        "hazard", "Cracks, ridges, open water, current, who broke through...",
        new ListReader<IceHazard>(new ChoiceReader<IceHazard>(IceWords.Hazards, IceWords.OtherHazards), MostHazards));

    public CommandOption<Temperature> Air { get; } = CommandOption.Optional("air", "The air where you are", IceReaders.Air);

    public CommandOption<string> Note { get; } = CommandOption.Optional("note", "Anything to know", new NoteReader(LongestNote));

    public CommandOption<Attachment> Photo { get; } = CommandOption.Optional("photo", "A photo of the ice", new AttachmentReader("a photo"));

    public CommandOption<Moment> When { get; } = CommandOption.Optional("when", "When it was measured; now, if you leave it out", new MomentReader());

    public CommandOption<string> Author { get; } = CommandOption.Optional(
        "author", "Whose post you pass on", new NameReader("a name"));

    public CommandOption<string> Link { get; } = CommandOption.Optional(
        "link", "Where that post stands", new NoteReader(LongestQuote));

    public CommandOption<string> Quote { get; } = CommandOption.Optional(
        "quote", "What that post says", new NoteReader(LongestQuote));

    public CommandOption<Moment> Written { get; } = CommandOption.Optional(
        "written", "When that post was written", new MomentReader());

    public CommandOption<bool> Hearsay { get; } = CommandOption.Optional(
        "sure", "Whether it was measured, or guessed or heard", new ChoiceReader<bool>(
            [("measured", false), ("heard", true)], [("guessed", true), ("hearsay", true)]));

    public CommandOption<string> Post { get; } = CommandOption.Optional(
        "post", "What somebody wrote, as it stands there", new FreeTextReader("what the post says, as it stands there", LongestPost));

    public CommandOption<string> Found { get; } = CommandOption.Optional(
        "found", "What the post says, place by place: landing: 4in clear; narrows: slush, heard",
        new FreeTextReader("place by place what was found, such as landing: 4in clear; narrows: slush, heard"));

    public CommandOption<Moment> WhenSaid { get; } = CommandOption.Optional(
        "when", "When it was measured; unknown, if you leave it out", new MomentReader());

    public CommandOption<int> Number { get; } = CommandOption.Required(
        "report", "The report's number", new WholeNumberReader(1, int.MaxValue, "a number that /ice board shows, such as 12"));

    public CommandOption<string> Reason { get; } = CommandOption.Required("reason", "Why", new NoteReader(LongestReason));

    public CommandOption<int> With { get; } = CommandOption.Required(
        "measured", "The number of the new measurement", new WholeNumberReader(1, int.MaxValue, "a number that /ice board shows, such as 12"));

    public CommandOption<WaterRules> WaterSaid { get; } = CommandOption.Optional("water", "Which water", new WaterReader(knowledge.Waters));

    public CommandOption<WaterRules> NewWater { get; } = CommandOption.Optional("water", "Another water", new WaterReader(knowledge.Waters));

    public CommandOption<int> People { get; } = CommandOption.Optional("people", "How many people", new WholeNumberReader(1, MostPeople));

    public CommandOption<GearKind> Shelter { get; } = CommandOption.Optional(
        "shelter", "A shelter that stands there", new RecordReader<GearKind>(knowledge.Gear, "a shelter"));

    public CommandOption<IceUse> Machine { get; } = CommandOption.Optional(
        "machine", "A machine", new ChoiceReader<IceUse>([.. IceWords.Uses.Where(use => use.Value > IceUse.Gathering)]));

    public CommandOption<Mass> Weight { get; } = CommandOption.Optional(
        "weight", "What sleds, gear and machine weigh", IceReaders.Load);

    public CommandOption<Duration> Stay { get; } = CommandOption.Optional("stay", "How long it stands there", new StayReader());

    public CommandOption<Temperature> Warmest { get; } = CommandOption.Optional(
        "warmest", "The warmest air of the last 24 hours", IceReaders.Air);

    public CommandOption<Moment> FreezingSince { get; } = CommandOption.Optional(
        "freezing-since", "Since when the air has stayed below freezing", new MomentReader());

    public CommandOption<DayList> Days { get; } = CommandOption.Optional(
        "days", "Each day's max/min, oldest first: 20/5 18/2 25/-3F", new DayListReader());

    public CommandOption<Attachment> DayFile { get; } = CommandOption.Optional(
        "file", "A CSV file of daily max and min", new AttachmentReader("a CSV file"));

    public CommandOption<bool> Permitted { get; } = CommandOption.Optional(
        "permitted", "Whether the local authority permits driving there", new ChoiceReader<bool>([("yes", true), ("no", false)]));

    public CommandOption<string> Crew { get; } = CommandOption.Optional(
        "crew", "The other crew; without one you see whom you share with", new PartnerReader());

    public CommandOption<bool> SpotShown { get; } = CommandOption.Optional(
        "spot", "Whether they may see the exact spot; hidden if left out", new ChoiceReader<bool>([("shown", true), ("hidden", false)]));

    public CommandOption<bool> End { get; } = CommandOption.Optional("end", "Share no more", new ChoiceReader<bool>([("yes", true)]));

    public CommandOption<string> Authority { get; } = CommandOption.Optional(
        "authority", "The authority whose table your crew follows", new ChoiceReader<string>(
            [.. AuthorityTable.All.Select(table => (table.Key, table.Key))]));

    public CommandOption<IceUse> Use { get; } = CommandOption.Optional("load", "What a figure of your own is for", new ChoiceReader<IceUse>(IceWords.Uses));

    public CommandOption<ExactLength> AtLeast { get; } = CommandOption.Optional("thickness", "At least so much new clear ice", Thickness);

    public CommandOption<string> Reference { get; } = CommandOption.Optional(
        "reference", "Where the figure is from, with its date", new NameReader("a page, such as town notice of 2 Jan 2027"));

    /// <summary>Everything that a report may say, beside its water.</summary>
    public IReadOnlyList<CommandOption> Details =>
        [Spot, Holes, From, Clear, White, Total, Kind, Hazard, Snow, Slush, Air, When, Note, Photo, Author, Link, Quote, Written, Hearsay];
}
