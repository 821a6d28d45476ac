using CrewBot.Core.Knowledge.Reading;

namespace CrewBot.Core.Knowledge;

/// <summary>Reads the built-in knowledge and whatever a crew lays over it, and checks the whole.</summary>
/// <remarks>
/// Every file is one object of sections, each a list of records. A record whose key is known already changes just the
/// fields it states, down into objects (RFC 7396, JSON Merge Patch: null takes a field away, a list replaces the list);
/// a new key must be a whole record.
/// </remarks>
public static class KnowledgeReader
{
    private static readonly string[] BuiltInFiles =
    [
        "species.json", "presentations.json", "baits.json", "outfits.json", "lines.json", "knots.json", "hardware.json", "hooks.json",
        "break-signs.json", "gear.json", "needs.json",
    ];

    /// <summary>Reads the built-in knowledge with a crew's own file laid over it.</summary>
    /// <param name="overlayName">The file's name, for its faults.</param>
    /// <param name="overlay">The file's content.</param>
    /// <returns>The knowledge, or every fault found; never throws for what a file holds.</returns>
    public static KnowledgeReading Read(string overlayName, Stream overlay)
    {
        ArgumentNullException.ThrowIfNull(overlay);
        return ReadAll([.. BuiltIn(), (new LaidFile(overlayName, ByCrew: true), overlay)]);
    }

    internal static KnowledgeReading Read() => ReadAll([.. BuiltIn()]);

    private static IEnumerable<(LaidFile File, Stream Content)> BuiltIn() => BuiltInFiles.Select(name =>
        (new LaidFile(name, ByCrew: false), typeof(KnowledgeReader).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded.")));

    private static KnowledgeReading ReadAll(IReadOnlyList<(LaidFile File, Stream Content)> files)
    {
        var faults = new List<KnowledgeFault>();
        var drafts = new DraftRecords(faults);
        foreach (var (file, content) in files)
        {
            using (content)
            {
                drafts.Add(file, content);
            }
        }

        var knowledge = new TradeKnowledge
        {
            Species = drafts.Take("species", FishReader.Species),
            Presentations = drafts.Take("presentations", PresentationReader.Presentation),
            Baits = drafts.Take("baits", FishReader.Bait),
            Outfits = drafts.Take("outfits", LineReader.Outfit),
            Lines = drafts.Take("lines", LineReader.Line),
            LureMaterials = drafts.Take("lureMaterials", PresentationReader.Material),
            Knots = drafts.Take("knots", LineReader.Knot),
            Hardware = drafts.Take("hardware", HardwareReader.Piece),
            Hooks = drafts.Take("hooks", HardwareReader.Hook),
            SplitShot = drafts.Take("splitShot", HardwareReader.Shot),
            BreakSigns = drafts.Take("breakSigns", HardwareReader.Sign),
            Gear = drafts.Take("gear", GearReader.Kind),
            Needs = drafts.Take("needs", GearReader.Need),
            Waters = drafts.Take("waters", FishReader.Water),
        };
        drafts.RefuseLeftOver();
        if (faults.Count == 0)
        {
            faults.AddRange(KnowledgeRules.Check(knowledge, drafts.FileOf));
        }

        return new KnowledgeReading(faults.Count == 0 ? knowledge : null, faults);
    }
}
