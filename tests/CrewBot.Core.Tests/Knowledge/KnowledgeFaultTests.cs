namespace CrewBot.Core.Tests.Knowledge;

/// <summary>One row for each thing that can be wrong in a crew's file, and what the crew is told about it.</summary>
public sealed class KnowledgeFaultTests
{
    [Theory]
    [InlineData("", "crew.json: Not valid JSON at line 1: mend it there.")]
    [InlineData("not json", "crew.json: Not valid JSON at line 1: mend it there.")]
    [InlineData("{ \"species\": [\n{ \"key\" }] }", "crew.json: Not valid JSON at line 2: mend it there.")]
    [InlineData("[]", "crew.json: Write one object of sections, such as { \"species\": [ … ] }.")]
    [InlineData("null", "crew.json: Write one object of sections, such as { \"species\": [ … ] }.")]
    [InlineData("""{ "fishes": [] }""", "crew.json: fishes: There is no such section: check its spelling.")]
    [InlineData("""{ "species": {} }""", "crew.json: species: A section must be a list of records: [ … ].")]
    [InlineData("""{ "species": [null] }""", "crew.json: species: key: Every record needs a key, such as \"walleye\".")]
    [InlineData("""{ "species": [{ "key": 7 }] }""", "crew.json: species: key: Every record needs a key, such as \"walleye\".")]
    [InlineData(
        """{ "species": [{ "key": "walleye" }, { "key": "walleye" }] }""",
        "crew.json: species/walleye: key: This key stands twice in the file: keep one.")]
    [InlineData("\"half \\ud800 character\"", "crew.json: Write one object of sections, such as { \"species\": [ … ] }.")]
    [InlineData(
        "{ \"species\": [{ \"key\": \"half \\ud800\" }] }",
        "crew.json: Some text in it is not whole UTF-8: save the file again as UTF-8.")]
    public void Read_FileThatIsNoOverlay_SaysWhatToMend(string json, string expected) =>
        Assert.Equal([expected], Faults(json));

    [Fact]
    public void Read_PropertyTwice_IsRefused() => Assert.StartsWith(
        "crew.json: Not valid JSON",
        Assert.Single(Faults("""{ "species": [{ "key": "walleye", "light": "at dusk", "light": "at dawn" }] }""")),
        StringComparison.Ordinal);

    [Theory]
    [InlineData("""{ "species": [{ "key": "caf""", (byte)0xE9)]
    public void Read_TextInAnotherEncoding_AsksForUtf8(string start, byte foreign) => Assert.Equal(
        ["crew.json: Some text in it is not whole UTF-8: save the file again as UTF-8."],
        Overlay.Read([.. System.Text.Encoding.ASCII.GetBytes(start), foreign, .. "\" }] }"u8]).Faults.Select(fault => fault.ToString()));

    // What a field takes.
    [Theory]
    [InlineData("species", "walleye", """ "colour": "gold" """, "colour", "There is no such field: check its spelling.")]
    [InlineData("species", "walleye", """ "depth": { "low": "3 ft" } """, "depth.low", "There is no such field: check its spelling.")]
    [InlineData("species", "walleye", """ "softMouth": "yes" """, "softMouth", "Write true or false, without quotes.")]
    [InlineData("species", "walleye", """ "bodyDepthShare": "a fifth" """, "bodyDepthShare", "Write a number, without quotes.")]
    [InlineData("species", "walleye", """ "bodyDepthShare": 1e999 """, "bodyDepthShare", "Write a number, without quotes.")]
    [InlineData("species", "walleye", """ "light": 7 """, "light", "Write text in quotes.")]
    [InlineData("species", "walleye", """ "baits": "dough" """, "baits", "Write a list: [ … ].")]
    [InlineData("species", "walleye", """ "baits": [null] """, "baits[0]", "Null says nothing: write a value or take it out.")]
    [InlineData("species", "walleye", """ "depth": "20 ft" """, "depth", "Write an object of fields: { … }.")]
    [InlineData("species", "walleye", """ "class": "huge" """, "class", "'huge' is not one of: panfish, mid, big, giant.")]
    [InlineData("species", "walleye", """ "light": null """, "light", "This field is missing: a new record states every field.")]
    [InlineData(
        "species", "walleye", """ "depth": { "usual": "24 lb" } """, "depth.usual",
        "'24 lb' can't be read; write a number and a unit, such as \"24 ft\".")]
    [InlineData(
        "species", "walleye", """ "depth": { "usual": "1e999 ft" } """, "depth.usual",
        "'1e999 ft' can't be read; write a number and a unit, such as \"24 ft\".")]
    [InlineData(
        "species", "walleye", """ "weights": { "trophy": 5 } """, "weights.trophy",
        "'' can't be read; write a number and a unit, such as \"1/8 oz\".")]
    [InlineData(
        "species", "walleye", """ "hooks": { "low": "six" } """, "hooks.low",
        "'six' is no hook size; write it as text, such as \"6\" or \"2/0\".")]
    [InlineData("presentations", "small-jig", """ "loudness": 1.5 """, "loudness", "Write a whole number, without quotes.")]
    [InlineData("presentations", "small-jig", """ "loudness": 1e99 """, "loudness", "Write a whole number, without quotes.")]
    [InlineData(
        "presentations", "small-jig", """ "work": { "sleepy": "Let it be." } """, "work.sleepy",
        "'sleepy' is not one of: negative, neutral, positive.")]
    [InlineData("presentations", "small-jig", """ "work": "Hold still." """, "work", "Write an object of names with their values: { … }.")]
    [InlineData("presentations", "small-jig", """ "sizes": [{ "length": "1 in" }] """, "sizes[0].weight", "This field is missing: a new record states every field.")]
    [InlineData("lines", "braid", """ "sizes": [{ "test": "4 lb" }] """, "sizes[0].diameter", "This field is missing: a new record states every field.")]
    [InlineData("lines", "braid", """ "density": "1 lb" """, "density", "'1 lb' can't be read; write a number and a unit, such as \"11.34 g/cm3\".")]
    [InlineData("lines", "braid", """ "modulus": { "low": "3 psi" } """, "modulus.low", "'3 psi' can't be read; write a number and a unit, such as \"2 GPa\".")]
    [InlineData("outfits", "light", """ "braid": "six" """, "braid", "'six' can't be read; write a number and a unit, such as \"10 lb\".")]
    public void Read_ValueThatDoesNotFit_SaysWhatTheFieldTakes(string section, string key, string field, string path, string remedy) =>
        AssertFault(section, key, field, path, remedy);

    // What holds of every record.
    [Theory]
    [InlineData("species", "walleye", """ "source": " " """, "source", "It is blank: write it out.")]
    [InlineData("species", "walleye", """ "name": "Wall\neye" """, "name", "It holds a line break or another control character: write it as one plain line.")]
    [InlineData("species", "walleye", """ "name": "A walleye with a name that runs on and on" """, "name", "It is 41 characters long: cut it to 40.")]
    [InlineData("species", "walleye", """ "aliases": ["Laker"] """, "aliases", "'laker' already means lake-trout: leave it to one of the two.")]
    public void Read_RecordAtFault_SaysWhatToWrite(string section, string key, string field, string path, string remedy) =>
        AssertFault(section, key, field, path, remedy);

    // The built-in record on the other side of a clash is not at fault, and no crew could mend it.
    [Theory]
    [InlineData("""{ "species": [{ "key": "walleye", "aliases": ["laker"] }] }""", "crew.json: species/walleye: aliases: ")]
    [InlineData("""{ "presentations": [{ "key": "set-bait", "loudness": 2 }] }""", "crew.json: presentations/set-bait: loudness: ")]
    [InlineData("""{ "outfits": [{ "key": "light", "braid": "9 lb" }] }""", "crew.json: outfits/light: braid: ")]
    [InlineData("""{ "hardware": [{ "key": "snap-000", "size": "00" }] }""", "crew.json: hardware/snap-000: size: ")]
    public void Read_ClashWithABuiltInRecord_BlamesTheCrewsAlone(string json, string start) =>
        Assert.All(Faults(json), fault => Assert.StartsWith(start, fault, StringComparison.Ordinal));

    [Fact]
    public void Read_NewRecordWithABadKey_ShowsAGoodOne() => Assert.Contains(
        "crew.json: waters/Loon Basin: key: Write a key in lower case, words joined by hyphens, such as \"yellow-perch\".",
        Faults("""{ "waters": [{ "key": "Loon Basin", "name": "Loon Basin", "source": "booklet" }] }"""));

    [Theory]
    [InlineData(""" "weights": { "large": "7 kg" } """, "weights", "Weights must climb from small to trophy, above 0 and up to 100 kg.")]
    [InlineData(""" "lengths": { "small": "0 cm" } """, "lengths", "Lengths must climb from small to trophy, above 0 and up to 300 cm.")]
    [InlineData(""" "weights": { "trophy": "99 kg" } """, "weights", "No fish of these lengths weighs that: check the units of both.")]
    [InlineData(""" "bodyDepthShare": 0 """, "bodyDepthShare", "Write body depth as a share of length, above 0 and up to 1.")]
    [InlineData(""" "depth": { "usual": "80 ft" } """, "depth", "From, usual and to must not fall in that order; all above 0 and down to 200 m.")]
    [InlineData(""" "station": { "gap": { "neutral": "20 ft" } } """, "station.gap", "The gap must be 0 or more and less than the usual depth.")]
    [InlineData(""" "barotraumaDepth": "-3 m" """, "barotraumaDepth", "It lies above 0 and down to 200 m; leave it out where none is established.")]
    [InlineData(""" "hooks": { "low": "1/0", "high": "6" } """, "hooks", "Low is the smallest hook: 6 is smaller than 2, and 2 smaller than 1/0.")]
    [InlineData(""" "presentations": { "neutral": [] } """, "presentations.neutral", "The list is empty: name at least one presentation.")]
    [InlineData(""" "presentations": { "neutral": ["jiging-spoon"] } """, "presentations.neutral", "There is no presentation 'jiging-spoon': check its spelling or add it.")]
    [InlineData(""" "presentations": { "neutral": ["set-bait", "set-bait"] } """, "presentations.neutral", "'set-bait' stands twice in the list: keep one.")]
    [InlineData(""" "presentations": { "negative": ["rattle-bait"] } """, "presentations.negative", "rattle-bait has no work for that mood: take it out, or write one.")]
    [InlineData(""" "presentations": { "neutral": ["dead-bait"] } """, "presentations.neutral", "dead-bait has no outfit for that class: take it out, or give it one.")]
    [InlineData(""" "baits": ["caviar"] """, "baits", "There is no bait 'caviar': check its spelling or add it.")]
    [InlineData(""" "baits": ["dead-fish"] """, "baits", "dead-fish serves none of its presentations: take it out.")]
    public void Read_SpeciesAtFault_SaysWhatToWrite(string field, string path, string remedy) =>
        AssertFault("species", "walleye", field, path, remedy);

    [Theory]
    [InlineData("small-jig", """ "work": { "neutral": "" } """, "work", "It is blank: write it out.")]
    [InlineData("dead-bait", """ "offBottom": { "negative": "-1 in" } """, "offBottom", "Heights off the bottom lie from 0 to 10 m.")]
    [InlineData("small-jig", """ "step": 7 """, "step", "Steps run from 1 (passive) to 6; leave it out for one beside the scale.")]
    [InlineData("large-soft-body", """ "loudness": 5 """, "loudness", "Loudness runs from 0 (silent) to 4 (heard across the flat).")]
    [InlineData("rattle-bait", """ "loudness": 2 """, "loudness", "bladed-spoon, lower on the scale, is louder: it may not be.")]
    [InlineData("set-bait", """ "loudness": 2 """, "loudness", "small-jig, higher on the scale, is quieter: it may not be.")]
    [InlineData("small-jig", """ "hooks": 0 """, "hooks", "Count 1 to 6 hooks, a treble as one.")]
    [InlineData("small-jig", """ "trebles": 2 """, "trebles", "Trebles are counted among the hooks: from 0 to the number of hooks.")]
    [InlineData("dead-bait", """ "sizes": [] """, "sizes", "The list is empty: name at least one size.")]
    [InlineData("dead-bait", """ "sizes": [{ "weight": "1/2 oz", "length": "8 in" }, { "weight": "1/2 oz", "length": "9 in" }] """, "sizes", "List the lightest first, each weight once, above 0 and up to 1 kg.")]
    [InlineData("dead-bait", """ "sizes": [{ "weight": "1/4 oz", "length": "9 in" }, { "weight": "1/2 oz", "length": "8 in" }] """, "sizes", "A heavier size must not be shorter; lengths lie above 0 and up to 1 m.")]
    [InlineData("dead-bait", """ "sizes": [{ "weight": "1/4 oz", "length": "5 in", "hook": "4" }, { "weight": "1/2 oz", "length": "8 in", "hook": "6" }] """, "sizes", "Give every size a hook or none, and a heavier size never a smaller hook.")]
    [InlineData("dead-bait", """ "startWeight": { "mid": "1/4 oz" } """, "startWeight", "Start weights and outfits must name the same size classes, at least one.")]
    [InlineData("dead-bait", """ "startWeight": { "big": "3 g" } """, "startWeight", "3 g is none of its sizes: start from one of them.")]
    [InlineData("dead-bait", """ "outfits": { "big": "crane" } """, "outfits", "There is no outfit 'crane': check its spelling or add it.")]
    [InlineData("dead-bait", """ "materials": ["cheese"] """, "materials", "There is no lure material 'cheese': check its spelling or add it.")]
    [InlineData("rattle-bait", """ "bodyDensity": "0.9 g/cm3" """, "bodyDensity", "A body that sinks is denser than water: above 1 and up to 20 g/cm3.")]
    [InlineData("rattle-bait", """ "fall": { "high": 1.2 } """, "fall", "Low must not exceed high, and both lie above 0 and up to 1 (0.8 is 80 per cent).")]
    [InlineData("rattle-bait", """ "knot": "bow" """, "knot", "There is no knot 'bow': check its spelling or add it.")]
    [InlineData("rattle-bait", """ "knot": "fg" """, "knot", "fg joins two lines: name a knot that ties to a lure.")]
    public void Read_PresentationAtFault_SaysWhatToWrite(string key, string field, string path, string remedy) =>
        AssertFault("presentations", key, field, path, remedy);

    [Theory]
    [InlineData("baits", "dough", """ "serves": ["trolling"] """, "serves", "There is no presentation 'trolling': check its spelling or add it.")]
    [InlineData("baits", "dough", """ "hooking": "" """, "hooking", "It is blank: write it out.")]
    [InlineData("outfits", "light", """ "leader": "9 lb" """, "leader", "Lightest first: no heavier than on light-plus, the next one.")]
    [InlineData("outfits", "light", """ "leader": "3 lb" """, "leader", "Lightest first: no lighter than on panfish, the one before.")]
    [InlineData("outfits", "trophy", """ "braid": "200 lb" """, "braid", "No line of that kind is listed in that test: choose one from the line tables.")]
    [InlineData("lines", "braid", """ "density": "97 g/cm3" """, "density", "It lies from 0.5 to 23 g/cm3: check the unit.")]
    [InlineData("lines", "braid", """ "modulus": { "low": "90 GPa" } """, "modulus", "Low must not exceed high, and both lie above 0 and up to 1000 GPa.")]
    [InlineData("lines", "braid", """ "solidFraction": 70 """, "solidFraction", "Write the solid share of its circle, above 0 and up to 1 (a single strand).")]
    [InlineData("lines", "nylon", """ "refractiveIndex": 0 """, "refractiveIndex", "It lies from 1 to 3; leave it out for an opaque material.")]
    [InlineData("lines", "titanium", """ "sizes": [{ "test": "20 lb", "diameter": "0.013 in" }] """, "sizes", "A table needs at least two sizes.")]
    [InlineData("lines", "titanium", """ "sizes": [{ "test": "20 lb", "diameter": "0.013 in" }, { "test": "30 lb", "diameter": "0.012 in" }] """, "sizes", "List the thinnest first: test and diameter must both climb, above 0.")]
    [InlineData("lines", "titanium", """ "sizes": [{ "test": "10 lb", "diameter": "0.009 in" }, { "test": "20 lb", "diameter": "0.013 in" }, { "test": "25 lb", "diameter": "0.19 in" }] """, "sizes", "25 lb at 4.826 mm is out of line with the rest: look for a slipped digit.")]
    [InlineData("lines", "braid", """ "overLabel": { "high": 18 } """, "overLabel", "Low must not exceed high, and both lie from 0.5 to 3.")]
    [InlineData("lines", "nylon", """ "waterUptakePercent": { "low": -1 } """, "waterUptakePercent", "Low must not exceed high, and both lie from 0 to 100.")]
    [InlineData("lines", "nylon", """ "lifeSeasons": { "low": 0 } """, "lifeSeasons", "Low must not exceed high, and both lie above 0 and up to 50.")]
    [InlineData("lines", "nylon", """ "pricePer100Metres": { "high": 1 } """, "pricePer100Metres", "Low must not exceed high, and both lie above 0.")]
    [InlineData("lureMaterials", "tin", """ "density": "72.9 g/cm3" """, "density", "It lies from 0.5 to 23 g/cm3: check the unit.")]
    [InlineData("knots", "uni", """ "efficiency": { "hemp": { "low": 0.5, "high": 0.6 } } """, "efficiency", "There is no line 'hemp': check its spelling or add it.")]
    [InlineData("knots", "uni", """ "efficiency": { "nylon": { "low": 85, "high": 95 } } """, "efficiency.nylon", "Low must not exceed high, and both lie above 0 and up to 1 (0.8 is 80 per cent).")]
    [InlineData("knots", "uni", """ "efficiency": { "nylon": null } """, "efficiency", "Say what it leaves of nylon.")]
    [InlineData("knots", "uni", """ "coldHands": 6 """, "coldHands", "Ease runs from 1 (at home only) to 5 (in mittens).")]
    [InlineData("hardware", "snap-0", """ "rated": "0 lb" """, "rated", "A rated strength lies above 0 and up to 1000 lb.")]
    [InlineData("hardware", "snap-0", """ "size": "00" """, "size", "snap-00 is that kind and size already: change that record instead.")]
    [InlineData("hooks", "hook-6", """ "opens": { "low": "0 lb" } """, "opens", "Low lies above 0, and high is at least low.")]
    [InlineData("hooks", "hook-6", """ "size": "4" """, "size", "hook-4 is that size already: change that record instead.")]
    [InlineData("splitShot", "british-bb", """ "mass": "0 g" """, "mass", "A shot's mass lies above 0 and up to 100 g.")]
    [InlineData("splitShot", "british-bb", """ "size": "AAA" """, "size", "british-aaa is that size on that scale already: change that record instead.")]
    [InlineData("breakSigns", "in-leader-frayed", """ "look": "clean" """, "look", "in-leader-clean is that place and look already: change that record instead.")]
    [InlineData("breakSigns", "in-leader-frayed", """ "fix": "" """, "fix", "It is blank: write it out.")]
    public void Read_GearAtFault_SaysWhatToWrite(string section, string key, string field, string path, string remedy) =>
        AssertFault(section, key, field, path, remedy);

    [Theory]
    [InlineData(""" "lines": 0 """, "lines", "Lines for one angler lie from 1 to 50; leave it out while unknown.")]
    [InlineData(""" "hooksPerLine": -1 """, "hooksPerLine", "Hooks on one line lie from 1 to 100; leave it out while unknown.")]
    [InlineData(""" "hooksPerLine": 1, "treblesPerLine": 2 """, "treblesPerLine", "Trebles count among the hooks, from 0 (none); leave it out while unknown.")]
    [InlineData(""" "baits": ["insect", "insect"] """, "baits", "A kind of bait stands twice in the list: keep one.")]
    [InlineData(""" "baits": ["worms"] """, "baits[0]", "'worms' is not one of: live-fish, dead-fish, cut-fish, insect, dough, soft.")]
    [InlineData(""" "leadBanned": "perhaps" """, "leadBanned", "Write true or false, without quotes.")]
    public void Read_WaterAtFault_SaysWhatToWrite(string field, string path, string remedy) =>
        AssertFault("waters", "tarn", $"""{field}, "name": "Tarn", "source": "booklet" """, path, remedy);

    private static void AssertFault(string section, string key, string field, string path, string remedy) => Assert.Contains(
        $"crew.json: {section}/{key}: {path}: {remedy}",
        Faults($$"""{ "{{section}}": [{ "key": "{{key}}", {{field}} }] }"""));

    private static IEnumerable<string> Faults(string json)
    {
        var reading = Overlay.Read(json);

        Assert.Null(reading.Knowledge);
        Assert.NotEmpty(reading.Faults);
        return reading.Faults.Select(fault => fault.ToString());
    }
}
