using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Chat.Catches;

/// <summary>The options that catch and line commands share, each declared once.</summary>
public sealed class CatchOptions(TradeKnowledge knowledge)
{
    /// <summary>The longest note that is kept.</summary>
    public const int LongestNote = 500;

    private const int MostLines = 10;
    private const int MostShown = 50;

    public CommandOption<string> Ask { get; } = CommandOption.Optional(
        "ask", "All of it in your own words: walleye 22.5in 24ft jigging spoon released",
        new FreeTextReader("a few words, such as walleye 22.5in 24ft released"));

    public CommandOption<Species> Species { get; } = CommandOption.Required(
        "species", "What you landed", new RecordReader<Species>(knowledge.Species, "a species"));

    public CommandOption<Species> OtherSpecies { get; } = CommandOption.Optional(
        "species", "The fish", new RecordReader<Species>(knowledge.Species, "a species"));

    public CommandOption<ExactLength> Length { get; } = CommandOption.Optional(
        "length", "Nose to tail, tail pinched", new ExactLengthReader(QuantityReaders.FishLength));

    public CommandOption<ExactMass> Weight { get; } = CommandOption.Optional(
        "weight", "What a scale said", new ExactMassReader(QuantityReaders.FishWeight));

    public CommandOption<ExactLength> Girth { get; } = CommandOption.Optional(
        "girth", "Around the thickest part", new ExactLengthReader(QuantityReaders.Gap));

    public CommandOption<WaterRules> Water { get; } = CommandOption.Optional(
        "water", "The water", new WaterReader(knowledge.Waters));

    public CommandOption<string> Spot { get; } = CommandOption.Optional(
        "spot", "The named spot in the water, for the crew alone", new NameReader("a spot of that water, such as north hump"));

    public CommandOption<ExactLength> Depth { get; } = CommandOption.Optional(
        "depth", "Depth of the water under the ice", new ExactLengthReader(QuantityReaders.Depth));

    public CommandOption<Presentation> Presentation { get; } = CommandOption.Optional(
        "presentation", "How it was fished", new RecordReader<Presentation>(knowledge.Presentations, "a presentation"));

    public CommandOption<string> Lure { get; } = CommandOption.Optional(
        "lure", "The lure or bait, in your own words", new OwnLureReader(new NameReader("a few words, such as 1/8oz gold spoon")));

    public CommandOption<Mood> Mood { get; } = CommandOption.Optional(
        "mood", "How willing the fish were", MoodWords.Reader);

    public CommandOption<int> Line { get; } = CommandOption.Optional("line", "Which of your lines", new WholeNumberReader(1, MostLines));

    public CommandOption<bool> Fate { get; } = CommandOption.Optional("fate", "Kept or released", Fates);

    public CommandOption<Moment> When { get; } = CommandOption.Optional("when", "When, if not just now", new MomentReader());

    public CommandOption<string> Note { get; } = CommandOption.Optional(
        "note", "Anything to remember", new NoteReader(LongestNote));

    public CommandOption<Attachment> Photo { get; } = CommandOption.Optional(
        "photo", "A photo of it", new AttachmentReader("a photo"));

    public CommandOption<Person> Poster { get; } = CommandOption.Optional(
        "poster", "Who posted the photo", new PersonReader());

    public CommandOption<Temperature> Air { get; } = CommandOption.Optional(
        "air", "Air temperature, for handling the fish; not kept", QuantityReaders.Air);

    public CommandOption<bool> Confirm { get; } = CommandOption.Optional(
        "confirm", "Log it though it looks odd", new ChoiceReader<bool>([("yes", true)]));

    public CommandOption<int> Number { get; } = CommandOption.Required(
        "catch", "The entry's number", new WholeNumberReader(1, int.MaxValue, "a number that /catch list shows, such as 12"));

    public CommandOption<int> Lines { get; } = CommandOption.Optional("lines", "How many lines", new WholeNumberReader(1, MostLines));

    public CommandOption<bool> More { get; } = CommandOption.Optional(
        "more", "They come on top of the lines that are down already", new ChoiceReader<bool>([("yes", true)]));

    public CommandOption<Person> Angler { get; } = CommandOption.Optional("angler", "Whose, if not yours", new PersonReader());

    public CommandOption<bool> Mine { get; } = CommandOption.Optional(
        "whose", "Yours or the crew's", new ChoiceReader<bool>([("mine", true), ("crew", false)]));

    public CommandOption<int> Most { get; } = CommandOption.Optional("most", "How many to show", new WholeNumberReader(1, MostShown));

    public CommandOption<Period> Span { get; } = CommandOption.Optional("span", "The span of time", new PeriodReader());

    public CommandOption<Period> BoardSpan { get; } = CommandOption.Optional(
        "span", "The span of time", new PeriodReader(("trip", Period.Trip)));

    public CommandOption<int> Trip { get; } = CommandOption.Optional(
        "trip", "For a trip: its number, if not the running or last one", new WholeNumberReader(1, int.MaxValue));

    /// <summary>Everything that an entry may say, beside its species.</summary>
    public IReadOnlyList<CommandOption> Details =>
        [Length, Weight, Girth, Water, Spot, Depth, Presentation, Lure, Mood, Line, Fate, When, Note, Photo, Air, Confirm];

    internal static ChoiceReader<bool> Fates { get; } = new(
        [("kept", true), ("released", false)], [("keep", true), ("let go", false), ("let it go", false), ("back", false), ("put back", false), ("threw back", false), ("c&r", false)]);
}
