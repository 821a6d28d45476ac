using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Ice;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Trips;
using CrewBot.Storage.Trips;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>The options that trip commands share, each declared once.</summary>
public sealed class TripOptions(TradeKnowledge knowledge)
{
    private const int MostPeople = 40;
    private const int MostPieces = 40;
    private const int MostSeats = 12;
    private const int LongestNote = 300;

    public CommandOption<WaterRules> Water { get; } = CommandOption.Required("water", "Where to", new WaterReader(knowledge.Waters));

    public CommandOption<DayTime> Meet { get; } = CommandOption.Required("meet", "When you meet", new DayTimeReader());

    public CommandOption<WaterRules> NewWater { get; } = CommandOption.Optional("water", "Another water", new WaterReader(knowledge.Waters));

    public CommandOption<DayTime> NewMeet { get; } = CommandOption.Optional("meet", "Another time to meet", new DayTimeReader());

    public CommandOption<DayTime> Return { get; } = CommandOption.Optional(
        "return", "When everybody is off the ice", new DayTimeReader());

    public CommandOption<string> Place { get; } = CommandOption.Optional(
        "place", "Where you meet", new NameReader("a place, such as the north landing"));

    public CommandOption<Species> Species { get; } = CommandOption.Optional(
        "species", "What you are after", new RecordReader<Species>(knowledge.Species, "a species"));

    public CommandOption<ExactLength> Depth { get; } = CommandOption.Optional(
        "depth", "How deep you mean to fish", new ExactLengthReader(QuantityReaders.Depth));

    public CommandOption<string> Note { get; } = CommandOption.Optional("note", "Anything to know", new NoteReader(LongestNote));

    public CommandOption<int> Trip { get; } = CommandOption.Optional(
        "trip", "The trip's number, if not the next one", new WholeNumberReader(1, int.MaxValue));

    public CommandOption<TripAnswer> Answer { get; } = CommandOption.Optional(
        "answer", "Whether you come; in, if left out", new ChoiceReader<TripAnswer>(
            [("in", TripAnswer.In), ("maybe", TripAnswer.Maybe), ("out", TripAnswer.Out)], [("yes", TripAnswer.In), ("no", TripAnswer.Out)]));

    public static CommandOption<int> Party { get; } = CommandOption.Optional(
        "party", "How many you are, yourself and children included", new WholeNumberReader(1, MostPeople));

    public static CommandOption<int> Children { get; } = CommandOption.Optional(
        "children", "How many of them are children in your care", new WholeNumberReader(0, MostPeople));

    public CommandOption<bool> Smoke { get; } = CommandOption.Optional(
        "smoke", "Whether you smoke inside, or ask for a shelter where nobody does", new ChoiceReader<bool>(
            [("smoker", true), ("smoke-free", false)]));

    public CommandOption<string> With { get; } = CommandOption.Optional(
        "with", "Whom you would like to sit with", new NameReader("a name of somebody who comes"));

    public CommandOption<string> Apart { get; } = CommandOption.Optional(
        "apart", "Whom you would rather not sit with", new NameReader("a name of somebody who comes"));

    public CommandOption<string> Item { get; } = CommandOption.Optional(
        "item", "What you bring; leave it out to choose from your box", new NameReader("a thing, such as hub, power auger or throw rope"));

    public CommandOption<int> Count { get; } = CommandOption.Optional(
        "count", "How many; 0 takes it back", new WholeNumberReader(0, MostPieces));

    public CommandOption<GearFamily> As { get; } = CommandOption.Optional(
        "as", "For gear of your own: what it is there for", new ChoiceReader<GearFamily>(
            [.. Enum.GetValues<GearFamily>().Select(family => (TripWords.Of(family), family))]));

    public CommandOption<int> Seats { get; } = CommandOption.Optional(
        "seats", "For a shelter or vehicle of your own: its seats", new WholeNumberReader(1, MostSeats));

    public CommandOption<Mass> Weight { get; } = CommandOption.Optional(
        "weight", "For gear of your own: what it weighs", QuantityReaders.FishWeight);

    public CommandOption<bool> Look { get; } = CommandOption.Optional(
        "look", "Only look: nobody is told another seat", new ChoiceReader<bool>([("yes", true)]));

    public CommandOption<NeedRule> Mine { get; } = CommandOption.Optional(
        "mine", "A missing thing that you will bring", new RecordReader<NeedRule>(knowledge.Needs, "a need"));

    public CommandOption<NeedRule> Waive { get; } = CommandOption.Optional(
        "waive", "A need that you answer for going without", new RecordReader<NeedRule>(knowledge.Needs, "a need"));

    public CommandOption<DayTime> DueBack { get; } = CommandOption.Optional(
        "back", "When you mean to be back, if not with the trip", new DayTimeReader { TakesSpans = true });

    public CommandOption<string> Who { get; } = CommandOption.Optional(
        "who", "Whose party, if not your own", new NameReader("a name of somebody who is out"));

    public CommandOption<string> Spot { get; } = CommandOption.Optional(
        "spot", "Where on the water you will be", new NameReader("a place on the water, such as the north hump"));

    public CommandOption<Temperature> Warmest { get; } = CommandOption.Optional(
        "warmest", "How warm it has been at most within 24 hours", IceReaders.Air);

    public CommandOption<IReadOnlyList<ForecastPoint>> Forecast { get; } = CommandOption.Optional(
        "forecast", "The forecast, hour by hour as far as you have it", new ListReader<ForecastPoint>(new ForecastReader(), most: 12));

    public CommandOption<Later> By { get; } = CommandOption.Required("by", "How much later you will be, or by what time", new LaterReader());
}
