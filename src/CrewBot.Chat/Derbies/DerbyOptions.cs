using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Chat.Derbies;

/// <summary>The options of derby commands, each declared once.</summary>
public sealed class DerbyOptions(TradeKnowledge knowledge)
{
    private const int MostNumber = 100_000;
    private const int MostFish = 50;
    private const int MostMinutes = 24 * 60;
    private const int MostListed = 15;

    private static readonly QuantityReader<Length> Steps = new("inches or centimetres, such as 1/4in")
    {
        Noun = "a step",
        Dimension = Dimension.Length,
        Of = metres => UnitsNet.Length.FromMeters(metres),
        Range = (0.002, 0.5),
        Write = (length, show) => show.Gap(length),
        Bare = ("in", "cm"),
    };

    public CommandOption<string> Derby { get; } = CommandOption.Optional(
        "derby", "The derby's name or number, when more than one is on", new NameReader("a derby's name or number, such as Basin day or 2"));

    public CommandOption<string> Name { get; } = CommandOption.Optional(
        "name", "What to call it", new NameReader("a name, such as Basin day"));

    public CommandOption<Moment> Starts { get; } = CommandOption.Optional("starts", "The first moment that counts, if not now", new MomentReader { IsToCome = true });

    public CommandOption<Moment> Ends { get; } = CommandOption.Optional("ends", "The last moment that counts, if not 16:00", new MomentReader { IsToCome = true });

    public CommandOption<DerbyFormat> Format { get; } = CommandOption.Optional(
        "format", "What it is scored by, if not the total of the best", new ChoiceReader<DerbyFormat>(
        [
            ("best total", DerbyFormat.BestTotal), ("longest", DerbyFormat.Longest), ("one of each", DerbyFormat.OneOfEach),
            ("points", DerbyFormat.Points), ("species-fair", DerbyFormat.SpeciesFair), ("relative weight", DerbyFormat.Condition),
            ("most fish", DerbyFormat.MostFish),
        ],
        ("mixed bag", DerbyFormat.OneOfEach)));

    public CommandOption<int> Best { get; } = CommandOption.Optional(
        "best", "How many fish count, if not 3; for most fish the bag limit", new WholeNumberReader(1, MostFish));

    public CommandOption<int> BestOfEach { get; } = CommandOption.Optional(
        "of-each", "How many of one species count", new WholeNumberReader(1, MostFish));

    public CommandOption<IReadOnlyDictionary<string, decimal>> Factors { get; } = CommandOption.Optional<IReadOnlyDictionary<string, decimal>>(
        "factors", "Points for an inch or a centimetre, by species", new FactorsReader(knowledge.Species));

    public CommandOption<IReadOnlyList<Species>> Species { get; } = CommandOption.Optional(
        "species", "Species that count, if not all", new ListReader<Species>(new RecordReader<Species>(knowledge.Species, "a species"), MostListed));

    public CommandOption<WaterRules> Water { get; } = CommandOption.Optional(
        "water", "The water that counts, if not all", new WaterReader(knowledge.Waters));

    public CommandOption<ExactLength> Minimum { get; } = CommandOption.Optional(
        "minimum", "The shortest fish that counts", new ExactLengthReader(QuantityReaders.FishLength));

    public CommandOption<ExactLength> Step { get; } = CommandOption.Optional(
        "step", "Step of the board, if not 1/4 in or 1/2 cm", new ExactLengthReader(Steps));

    public CommandOption<Rounding> Rounding { get; } = CommandOption.Optional(
        "rounding", "Which line counts between two, if not the one below", new ChoiceReader<Rounding>(
            [("down", Core.Derbies.Rounding.Down), ("nearest", Core.Derbies.Rounding.Nearest), ("up", Core.Derbies.Rounding.Up)]));

    public CommandOption<bool> OnlyFate { get; } = CommandOption.Optional(
        "only", "Only kept or only released fish, if not both", CatchOptions.Fates);

    public CommandOption<Evidence> Proof { get; } = CommandOption.Optional(
        "evidence", "What makes a fish count, if not a crewmate's word", new ChoiceReader<Evidence>(
            [("crewmate", Evidence.Crewmate), ("photo", Evidence.Photo), ("own word", Evidence.OwnWord)]));

    public CommandOption<int> Grace { get; } = CommandOption.Optional(
        "grace", "Minutes after the end in which word is still taken, if not 15", new WholeNumberReader(0, MostMinutes));

    public CommandOption<int> Protests { get; } = CommandOption.Optional(
        "protests", "Minutes after that in which protests are heard, if not 60", new WholeNumberReader(0, MostMinutes));

    public CommandOption<IReadOnlyList<TieBreak?>> Ties { get; } = CommandOption.Optional(
        "ties", "What parts equal totals, in order, if not who was earlier", new ListReader<TieBreak?>(
            new ChoiceReader<TieBreak?>(
            [
                ("earlier", TieBreak.Earliest), ("next best", TieBreak.NextBest), ("big fish", TieBreak.BigFish), ("shared", null),
            ]),
            most: 3));

    public CommandOption<RankNumbers> Ranking { get; } = CommandOption.Optional(
        "ranking", "How places are numbered after a tie, if not 1224", new ChoiceReader<RankNumbers>(
            [("1224", RankNumbers.Standard), ("1223", RankNumbers.Dense), ("1334", RankNumbers.Modified), ("fractional", RankNumbers.Fractional)]));

    public CommandOption<bool> Teams { get; } = CommandOption.Optional(
        "teams", "Teams: the sum of members' totals, or one pooled bag", new ChoiceReader<bool>([("sum", false), ("pooled", true)]));

    public CommandOption<int> TeamBest { get; } = CommandOption.Optional(
        "team-best", "How many members' totals are summed, if not all", new WholeNumberReader(1, MostFish));

    public CommandOption<int> MostEntries { get; } = CommandOption.Optional(
        "most", "Most entries of one angler", new WholeNumberReader(1, 1000));

    public CommandOption<string> Team { get; } = CommandOption.Optional("team", "Your team", new NameReader("a team's name, such as North"));

    public CommandOption<string> NewTeam { get; } = CommandOption.Required("team", "The team to fish for", new NameReader("a team's name, such as North"));

    public CommandOption<int> Catch { get; } = CommandOption.Optional(
        "catch", "A fish of your log, if not the last", new WholeNumberReader(1, int.MaxValue, "a number that /catch list shows, such as 12"));

    public CommandOption<int> Entry { get; } = CommandOption.Required("entry", "The entry's number, as its message shows it", new WholeNumberReader(1, MostNumber));

    public CommandOption<int> OneEntry { get; } = CommandOption.Optional("entry", "One entry", new WholeNumberReader(1, MostNumber));

    public CommandOption<EntryRuling> Ruling { get; } = CommandOption.Optional(
        "ruling", "What you rule", new ChoiceReader<EntryRuling>(
            [("accept", EntryRuling.Accept), ("refuse", EntryRuling.Refuse), ("ask", EntryRuling.Ask)]));

    public CommandOption<string> Reason { get; } = CommandOption.Required("reason", "Why; it is on the record", new NoteReader(200));

    public CommandOption<string> RulingReason { get; } = CommandOption.Optional("reason", "Why; it is on the record", new NoteReader(200));

    public CommandOption<ExactLength> NewLength { get; } = CommandOption.Required(
        "length", "The right length", new ExactLengthReader(QuantityReaders.FishLength));

    public CommandOption<ExactLength> PenaltyLength { get; } = CommandOption.Required(
        "length", "What to take off; a step's multiple", new ExactLengthReader(Steps));

    public CommandOption<string> Person { get; } = CommandOption.Optional("person", "Somebody else", new NameReader("a person's name"));
}
