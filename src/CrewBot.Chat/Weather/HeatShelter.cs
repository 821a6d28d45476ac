using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>Answers <c>/weather heat</c>: what a heated shelter loses, what that burns, and what burning does to the air in it.</summary>
public sealed class HeatShelter : ICommandHandler
{
    private const string UsualShelter = "hub";

    // Of wind-blown fabric, an assumption of the trade's; in a gale more.
    private static readonly Frequency Calm = Frequency.FromCyclesPerHour(5);
    private static readonly Frequency Windy = Frequency.FromCyclesPerHour(10);
    private static readonly Temperature UsualInside = Temperature.FromDegreesCelsius(10);
    private static readonly Mass UsualBottle = Mass.FromPounds(1);
    private static readonly Ratio Fresh = Ratio.FromPercent(20.9);
    private static readonly Ratio Low = Ratio.FromPercent(18);

    private static readonly CommandOption<Temperature> Outside = CommandOption.Required("outside", "How cold it is outside", QuantityReaders.Air);
    private static readonly CommandOption<Temperature> Inside = CommandOption.Optional("inside", "How warm it shall be inside", QuantityReaders.Air);
    private static readonly CommandOption<RoomSize> Size = CommandOption.Optional("size", "The shelter's sides, if it is none of the trade's", new RoomSizeReader());
    private static readonly CommandOption<bool> Lined = CommandOption.Optional(
        "fabric", "Whether the walls are one layer or two", new ChoiceReader<bool>([("single", false), ("double", true)], [("insulated", true)]));

    private static readonly CommandOption<Power> Heater = CommandOption.Optional("heater", "What the heater is rated at", WeatherReaders.Heater);
    private static readonly CommandOption<Mass> Bottle = CommandOption.Optional("bottle", "Propane in the bottle", WeatherReaders.Bottle);

    private readonly CommandOption<GearKind> _shelter;
    private readonly GearKind _usual;

    public HeatShelter(TradeKnowledge knowledge)
    {
        _shelter = CommandOption.Optional("shelter", "Which shelter", new RecordReader<GearKind>(knowledge.Gear, "a shelter"));
        _usual = knowledge.Gear.First(gear => gear.Name == UsualShelter);
        Info = new(
            "weather heat", "What a heated shelter takes in heat and propane, and what that does to its air", "/weather heat outside:-10F shelter:hub heater:9000BTU/h",
            [Outside, Inside, _shelter, Size, Lined, Heater, Bottle])
        { NeedsNoCrew = true };
    }

    public CommandInfo Info { get; }

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(Answer(request));

    private Reply Answer(Request request)
    {
        var (outside, inside, shelter) = (request.Get(Outside), request.GetOr(Inside, UsualInside), request.GetOr(_shelter, _usual));
        if (FaultOf(request, outside, inside, shelter) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var room = request.TryGet(Size, out var given) ? given : RoomSize.Over(shelter.Footprint!.Value);
        var fabric = request.GetOr(Lined, false) ? ShelterHeat.DoubleFabric : ShelterHeat.SingleFabric;
        var loss = new ShelterLoss(room, fabric, TemperatureDelta.FromDegreesCelsius(inside.DegreesCelsius - outside.DegreesCelsius));
        var (low, high) = (loss.With(Calm), loss.With(Windy));
        var burner = request.TryGet(Heater, out var rated) ? rated : high;
        var (bottle, show) = (request.GetOr(Bottle, UsualBottle), request.Show);
        var (lasts, airless) = (Propane.RunTime(bottle, burner), Propane.SealedUntil(burner, room.Air, Fresh, Low));
        return new Reply
        {
            Headline = $"About {show.Heat(low, high)} keeps it {show.Warmer(loss.Warmer)} warmer than outside, give or take half",
            Lines =
            [
                $"Through the walls {show.Heat(loss.Walls, loss.Walls)}, with the air that comes and goes {show.Heat(low - loss.Walls, high - loss.Walls)}.",
                .. request.Has(Heater) ? (string[])[$"That heater at full keeps it about {show.Warmer(loss.WarmerBy(burner, Windy))} warmer in wind, {show.Warmer(loss.WarmerBy(burner, Calm))} in little."] : [],
                $"Propane: {show.Fish(Propane.RateFor(burner) * Duration.FromHours(1))} an hour{(request.Has(Heater) ? "" : " at the most")}; {show.Fish(bottle)} lasts {Hours(lasts)}. Cold bottles give less gas.",
                $"Never seal it: without any vent that fire takes this air to 18 % oxygen in {Math.Floor(airless.Minutes):0} min, people not counted, and carbon monoxide can come much earlier.",
                .. Understanding.Of(request, Assumed(request, shelter, room)),
            ],
            Figures =
            [
                WeatherFigures.HeatLow.Of(low), WeatherFigures.HeatHigh.Of(high), WeatherFigures.Propane.Of(Propane.RateFor(burner)),
                WeatherFigures.Bottle.Of(lasts), WeatherFigures.Sealed.Of(airless),
            ],
            Reasons =
            [
                string.Create(CultureInfo.InvariantCulture, $"Walls: U A ΔT with U = {fabric.WattsPerSquareMeterCelsius:0.0} W/m²·K, by analogy with greenhouse tables (no figure for tents was found), and A = {room.Skin.SquareMeters:0.0} m²."),
                string.Create(CultureInfo.InvariantCulture, $"Air: 0.33 n V ΔT with V = {room.Air.CubicMeters:0.0} m³ and n of 5 to 10 an hour, as wind-blown fabric leaks (an assumption). That air is what you breathe: it is never wasted."),
                "Propane: 21 548 BTU/lb (a supplier's data sheet). Each mass burned takes 3.6 times as much oxygen and makes 1.6 times as much water.",
                "Home CO alarms are slow by design: 60 to 240 min at 70 ppm, 10 to 50 at 150 (UL 2034, from memory).",
            ],
            Cautions = WeatherCautions.Fire,
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private string? FaultOf(Request request, Temperature outside, Temperature inside, GearKind shelter) =>
        inside.DegreesCelsius <= outside.DegreesCelsius
            ? $"inside: {request.Show.Degrees(inside)} is no warmer than outside. Give more, such as inside:50F."
        : request.Has(_shelter) && request.Has(Size) ? "shelter and size both say how large it is: keep one."
        : !request.Has(Size) && shelter is not { Family: GearFamily.Shelter, Footprint: not null } ? $"shelter: {shelter.Name} is no shelter whose size is known. Give its sides, such as size:6x6x6.5ft."
        : null;

    private static List<string> Assumed(Request request, GearKind shelter, RoomSize room)
    {
        List<string> assumed = [];
        if (!request.Has(Size))
        {
            assumed.Add($"{shelter.Name}, square, {request.Show.Depth(room.Deep)} wide and {request.Show.Depth(room.High)} high");
        }

        if (!request.Has(Lined))
        {
            assumed.Add("one layer of fabric");
        }

        if (!request.Has(Inside))
        {
            assumed.Add($"{request.Show.Degrees(UsualInside)} inside");
        }

        if (!request.Has(Bottle))
        {
            assumed.Add($"{request.Show.Fish(UsualBottle)} bottle");
        }

        return assumed;
    }

    private static string Hours(Duration time) => time.Hours < 1
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(time.Minutes):0} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(10 * time.Hours) / 10:0.#} h");
}
