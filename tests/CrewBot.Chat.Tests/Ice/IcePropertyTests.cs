using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Ice;
using CsCheck;

namespace CrewBot.Chat.Tests.Ice;

/// <summary>What holds of replies whatever is reported: the rules that override every number (docs/handbook/ice.md).</summary>
public sealed partial class IcePropertyTests
{
    private const int Samples = 20;
    private const double Slip = 1e-6;

    private static readonly string[] Kinds = ["clear", "white", "total"];

    private static readonly Gen<string> Measurement = Gen.Select(Gen.Int[10, 400], Gen.Int[0, 2], Gen.Bool).Select((tenths, kind, isMetric) => isMetric
        ? string.Create(CultureInfo.InvariantCulture, $"{Kinds[kind]}:{tenths / 5m}cm")
        : string.Create(CultureInfo.InvariantCulture, $"{Kinds[kind]}:{tenths / 10m}in"));

    private static readonly Gen<string> Hazard = Gen.Int[0, IceWords.Hazards.Count - 1].Select(at => IceWords.Hazards[at].Word);

    private static readonly Gen<string> Load = Gen.Select(Gen.Int[1, 8], Gen.Int[1, 40]).Select((people, pounds) => $"people:{people} weight:{pounds * 25}lb");

    [Fact]
    public async Task Carry_OneMoreReport_NeverRaisesTheFigureShown() => await Measurement.Array[2, 5].SampleAsync(
        async reports =>
        {
            await using var room = await RoomAsync();
            var (least, isBlocked) = (double.PositiveInfinity, false);
            foreach (var report in reports)
            {
                await FileAsync(room, report);
                var effective = FigureOf(await AskAsync(room, ""), "ice.effective");

                Assert.False(isBlocked && effective is not null);
                Assert.True((effective ?? 0) <= least + Slip);
                (least, isBlocked) = (effective ?? least, effective is null);
            }
        },
        iter: Samples,
        threads: 1);

    [Fact]
    public async Task Carry_HazardAdded_NeverLowersTheCaution() => await Gen.Select(Measurement, Hazard, Load).SampleAsync(
        async (report, hazard, load) =>
        {
            await using var room = await RoomAsync();
            await FileAsync(room, report);
            var before = await AskAsync(room, load);

            await FileAsync(room, $"hazard:\"{hazard}\"");
            var after = await AskAsync(room, load);

            Assert.True(CautionOf(after) >= CautionOf(before), $"{before.Headline} became {after.Headline}");
            Assert.True((FigureOf(after, "ice.effective") ?? 0) <= (FigureOf(before, "ice.effective") ?? 0) + Slip);
        },
        iter: Samples,
        threads: 1);

    [Fact]
    public async Task Carry_ShownTextReadBack_IsNeverMorePermissive() => await Gen.Select(Measurement, Load, Gen.Bool).SampleAsync(
        async (report, load, isMetric) =>
        {
            await using var room = await RoomAsync();
            await room.SayAsync($"/crew me units:{(isMetric ? "metric" : "customary")}");
            await FileAsync(room, report);

            var reply = await AskAsync(room, load);

            foreach (var shown in ShownIn(reply, "Asked for:"))
            {
                Assert.True(shown >= FigureOf(reply, "ice.required") - Slip);
            }

            foreach (var shown in ShownIn(reply, "Measured:"))
            {
                Assert.True(shown <= FigureOf(reply, "ice.effective") + Slip);
            }
        },
        iter: Samples,
        threads: 1);

    [Fact]
    public async Task Carry_AskersUnits_ChangeNoVerdict() => await Gen.Select(Measurement, Load).SampleAsync(
        async (report, load) =>
        {
            await using var room = await RoomAsync();
            await FileAsync(room, report);
            var customary = await AskAsync(room, load);

            await room.SayAsync("/crew me units:metric");
            var metric = await AskAsync(room, load);

            Assert.Equal(CautionOf(customary), CautionOf(metric));
            Assert.Equal(FigureOf(customary, "ice.effective"), FigureOf(metric, "ice.effective"));
            Assert.Equal(FigureOf(customary, "ice.required"), FigureOf(metric, "ice.required"));
        },
        iter: Samples,
        threads: 1);

    private static async Task<CrewRoom> RoomAsync()
    {
        var room = new CrewRoom();
        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        return room;
    }

    private static async Task FileAsync(CrewRoom room, string what)
    {
        var filed = await room.SayAsync($"/ice report water:\"Loon Basin\" spot:\"north bay\" {what}");
        Assert.Null(filed.Problem);
        room.Now += TimeSpan.FromMinutes(1);
    }

    private static async Task<Reply> AskAsync(CrewRoom room, string load)
    {
        var reply = await room.SayAsync($"/ice carry water:\"Loon Basin\" spot:\"north bay\" warmest:10F {load}");
        Assert.Null(reply.Problem);
        return reply;
    }

    private static double? FigureOf(Reply reply, string key) => reply.Figures.SingleOrDefault(figure => figure.Key == key)?.Value;

    // Meets the figure; no answer; less than asked for; stay off.
    private static int CautionOf(Reply reply) =>
        reply.Headline.Contains("meets the published figure", StringComparison.Ordinal) ? 0
        : reply.Headline.Contains("stay off with this load", StringComparison.Ordinal) ? 2
        : reply.Cautions.Contains("Stay off, and tell others.") ? 3
        : 1;

    // Every thickness that a line opens with, in centimetres.
    private static IEnumerable<double> ShownIn(Reply reply, string start) =>
        from line in reply.Lines
        where line.StartsWith(start, StringComparison.Ordinal)
        from Match match in Thickness().Matches(line[..(line.IndexOf(')', StringComparison.Ordinal) + 1)])
        select double.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture) * (match.Groups["unit"].Value == "in" ? 2.54 : 1);

    [GeneratedRegex(@"(?<number>[0-9]+(?:\.[0-9]+)?) (?<unit>in|cm)", RegexOptions.ExplicitCapture)]
    private static partial Regex Thickness();
}
