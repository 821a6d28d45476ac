using CrewBot.Core.Knowledge;
using CsCheck;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class KnowledgeReaderTests
{
    [Fact]
    public void Read_OverlayWithoutSections_IsTheBuiltInKnowledge()
    {
        var reading = Overlay.Read("{}");

        Assert.Empty(reading.Faults);
        Assert.Equal(TradeKnowledge.BuiltIn.Species.Count, reading.Knowledge!.Species.Count);
    }

    [Fact]
    public void Read_KnownKey_ChangesOnlyWhatIsStated()
    {
        var reading = Overlay.Read("""{ "species": [{ "key": "walleye", "depth": { "usual": "26 ft" }, "baits": ["dough"] }] }""");

        Assert.Empty(reading.Faults);
        var (walleye, builtIn) = (reading.Knowledge!.Species["walleye"], TradeKnowledge.BuiltIn.Species["walleye"]);
        Assert.Equal(26, walleye.Depth.Usual.Feet, 1e-9);
        Assert.Equal(builtIn.Depth.To.Feet, walleye.Depth.To.Feet, 1e-9);
        Assert.Equal(["dough"], walleye.Baits);
        Assert.Equal(builtIn.Light, walleye.Light);
    }

    [Fact]
    public void Read_NullForAKnownField_TakesItAway()
    {
        var reading = Overlay.Read("""{ "species": [{ "key": "walleye", "barotraumaDepth": null }] }""");

        Assert.Empty(reading.Faults);
        Assert.Null(reading.Knowledge!.Species["walleye"].BarotraumaDepth);
    }

    [Fact]
    public void Read_NewKey_AddsARecord()
    {
        var reading = Overlay.Read("""
            { "baits": [{ "key": "mealworm", "name": "Mealworm", "aliases": ["golden grub"], "kind": "insect",
              "serves": ["small-jig"], "hooking": "Through the tough end.", "source": "common practice" }] }
            """);

        Assert.Empty(reading.Faults);
        Assert.True(reading.Knowledge!.Baits.TryFind("golden grubs", out var bait));
        Assert.Equal(BaitKind.Insect, bait.Kind);
    }

    [Fact]
    public void Read_RuleOfAWaterLeftOut_IsUnknown()
    {
        var reading = Overlay.Read("""{ "waters": [{ "key": "tarn", "name": "Tarn", "lines": 2, "source": "booklet" }] }""");

        Assert.Empty(reading.Faults);
        var water = reading.Knowledge!.Waters["tarn"];
        Assert.Equal(2, water.Lines);
        Assert.Null(water.LeadBanned);
        Assert.Null(water.Baits);
    }

    [Fact]
    public void Read_OverlayNamedLikeABuiltInFile_IsStillAnOverlay()
    {
        using var content = new MemoryStream("""{ "species": [{ "key": "walleye", "light": "at dusk" }] }"""u8.ToArray());

        Assert.Empty(KnowledgeReader.Read("species.json", content).Faults);
    }

    [Fact]
    public void Read_ByteOrderMarkAndComments_AreNoFault() =>
        Assert.Empty(Overlay.Read([0xEF, 0xBB, 0xBF, .. "// ours\n{ \"baits\": [], }"u8]).Faults);

    [Fact]
    public void Read_ExampleOverlay_HasNoFault()
    {
        var reading = Overlay.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Promised", "knowledge-overlay.json")));

        Assert.Empty(reading.Faults);
        Assert.Equal(["loon-basin", "tamarack-bay"], reading.Knowledge!.Waters.Select(water => water.Key));
        Assert.Null(reading.Knowledge.Waters["tamarack-bay"].BarblessOnly);
    }

    [Fact]
    public void Read_SeveralFaults_GivesThemAll()
    {
        var faults = Overlay.Read("""
            { "species": [{ "key": "walleye", "light": "", "baits": ["caviar"] }],
              "waters": [{ "key": "tarn", "name": "Tarn", "lines": 0, "source": "booklet" }] }
            """).Faults;

        Assert.Equal(["light", "baits", "lines"], faults.Select(fault => fault.Field));
    }

    [Fact]
    public void Read_AnyBytes_NeverThrowsAndExplainsItself() =>
        Gen.Byte.Array[0, 60].Sample(content => AssertKnowledgeOrFaults(Overlay.Read(content)), iter: 100);

    [Fact]
    public void Read_DamagedOverlay_NeverThrowsAndExplainsItself()
    {
        var sound = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Promised", "knowledge-overlay.json"));

        Gen.Select(Gen.Int[0, sound.Length - 1], Gen.Byte).Sample(
            damage =>
            {
                byte[] damaged = [.. sound];
                damaged[damage.Item1] = damage.Item2;
                AssertKnowledgeOrFaults(Overlay.Read(damaged));
            },
            iter: 100);
    }

    private static void AssertKnowledgeOrFaults(KnowledgeReading reading)
    {
        Assert.NotEqual(reading.Knowledge is null, reading.Faults.Count == 0);
        Assert.All(reading.Faults, fault => Assert.False(string.IsNullOrWhiteSpace(fault.Remedy)));
    }
}
