using CrewBot.Core.Pictures;
using UnitsNet;

namespace CrewBot.Drawing.Tests;

/// <summary>Pictures of an invented crew on invented water, for the gallery.</summary>
internal static class Samples
{
    private static readonly DateTimeOffset Dawn = new(2027, 1, 16, 7, 0, 0, TimeSpan.FromHours(-6));

    public static RacePicture Race { get; } = new(
        "Loon Basin open over time: 1. Ida 71.25 in, 2. Marek 68.5 in, 3. Noor 61.75 in, 4. Pat 44 in, 5. Sunniva 43.5 in.",
        "Loon Basin open: who led when",
        "length of the fish that count, in",
        [
            new("1. Ida", "71.25 in", Points((0.7, 21.5), (2.1, 45), (4.6, 66.5), (6.4, 71.25))),
            new("2. Marek", "68.5 in", Points((0.3, 24), (1.2, 46.25), (3.5, 68.5))),
            new("3. Noor", "61.75 in", Points((1.6, 19.5), (3.1, 41), (5.2, 61.75))),
            new("4. Pat", "44 in", Points((2.6, 22), (5.9, 44))),
            new("5. Sunniva", "43.5 in", Points((1.9, 20.5), (4.2, 43.5))),
        ],
        new TimeAxis(Dawn, Dawn.AddHours(8), [.. new[] { 0, 2, 4, 6, 8 }.Select(hour => new TimeTick(Dawn.AddHours(hour), $"{7 + hour}:00"))]));

    public static IntervalPicture Learned { get; } = new(
        "Walleye, this winter: jigging spoon is best (probable). Jigging spoon 1.4 a line-hour; set bait 0.62; glide bait 0.31; tube jig 0.5 from little fishing.",
        "Walleye, this winter: jigging spoon is best (probable)",
        "fish a line-hour, each with its 95 % interval",
        [
            new("Jigging spoon", "1.4 a line-hour, 43 fish in 31 line-hours", 1.1, 1.4, 1.8),
            new("Set bait", "0.62 a line-hour, 34 fish in 55 line-hours", 0.43, 0.62, 0.87),
            new("Glide bait", "0.31 a line-hour, 5 fish in 16 line-hours", 0.1, 0.31, 0.72),
            new("Tube jig", "0.50 a line-hour, 1 fish in 2.0 line-hours", 0.01, 0.5, 2.8),
        ]);

    public static SeatingPicture Seats { get; } = new(
        "Seats for 14 people. Big hub: Ida, Marek, Noor, Pat, Sunniva, Teo. Flip-over: Ash, Wren. Cabin: Bo, Cleo, Dag, Edda. Pop-up: Finn, Gro.",
        "Seats for 14 people",
        [
            new("Big hub", 6, ["Ida", "Marek", "Noor", "Pat", "Sunniva", "Teo"]),
            new("Cabin", 5, ["Bo", "Cleo", "Dag", "Edda"]),
            new("Flip-over", 2, ["Ash", "Wren"]),
            new("Pop-up", 3, ["Finn", "Gro"]),
        ]);

    public static IceBoardPicture Ice { get; } = new(
        "Ice reports of Loon Basin, January 4 to 16. North bay: 4, 5, 7 and 8 in, clear. The narrows: 5 in white, then open water.",
        "Loon Basin: ice as reported",
        [
            new("North bay", "8 in clear, 6 h ago, by Ida", [Report(0.5, 4, IceSign.Clear), Report(4, 5, IceSign.Clear), Report(8, 7, IceSign.White), Report(11.7, 8, IceSign.Clear)]),
            new("The narrows", "open water, 20 h ago, by Marek", [Report(2, 5, IceSign.White), Report(6.5, 4, IceSign.Unknown), Report(11.1, 0, IceSign.Unsound)]),
        ],
        [new(Length.FromInches(4), "stay off below 4 in"), new(Length.FromInches(6), "one on foot 6 in"), new(Length.FromInches(10), "a group, a sled 10 in")],
        new TimeAxis(Dawn.AddDays(-12), Dawn, [.. new[] { 0, 4, 8, 12 }.Select(day => new TimeTick(Dawn.AddDays(day - 12), $"{4 + day} Jan"))]),
        "A report says what one hole was, then. No ice is safe; check as you go, and ask locally.")
    {
        Reading = "Bars: the clear ice that a report counts as.",
        Sources = "White ice counts by half.",
    };

    public static CardPicture Card { get; } = new(
        "Pocket card of trip 3: meet 6:30 at Tamarack Bay landing, back by 17:00; people, shelters, waters and what to do when somebody is missing.",
        "Trip 3: Loon Basin, Sat Jan 16",
        [
            new("When and where", ["Meet 6:30, Tamarack Bay landing", "On the ice 7:00, off by 16:30", "Sun down 16:58"]),
            new("Who", ["14 people, 4 shelters; Ida leads", "Radio channel 4, look for each other at noon"]),
            new("Each brings", ["Picks round the neck, rope, throw bag at the sled", "Auger: Marek, Noor. Heaters: Ida, Bo", "Dry clothes in a sealed bag"]),
            new("If someone is not back by 17:00", ["Ida calls them, then their contact", "At 17:30 call the emergency number; the spot is North bay, 46.1234, -94.4321"]),
        ],
        "Whoever breaks through is cold for hours: get them dry and warm, and call for help.");

    public static IEnumerable<PictureData> All => [Race, Learned, Seats, Ice, Card];

    private static RacePoint[] Points(params (double Hours, double Total)[] points) =>
        [.. points.Select(point => new RacePoint(Dawn.AddHours(point.Hours), point.Total))];

    private static ReportedIce Report(double day, double inches, IceSign sign) =>
        new(Dawn.AddDays(day - 12), Length.FromInches(inches), sign);
}
