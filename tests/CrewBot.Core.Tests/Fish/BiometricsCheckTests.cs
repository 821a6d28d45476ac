using CrewBot.Core.Tests.Knowledge;

namespace CrewBot.Core.Tests.Fish;

/// <summary>What a crew is told when the biometrics in its file can't be right.</summary>
public sealed class BiometricsCheckTests
{
    [Theory]
    [InlineData(""" "standardWeight": { "slope": 5.2 } """, "standardWeight.slope", "The slope of a fish lies from 2.5 to 3.5.")]
    [InlineData(""" "standardWeight": { "intercept": -3.642 } """, "standardWeight.intercept", "A trophy would weigh nothing like its weight above: write log10, for millimetres and grams.")]
    [InlineData(""" "standardWeight": { "intercept": 400 } """, "standardWeight.intercept", "A trophy would weigh nothing like its weight above: write log10, for millimetres and grams.")]
    [InlineData(""" "standardWeight": { "minimumLength": "150 cm" } """, "standardWeight.minimumLength", "It must lie above 0 and below the trophy length.")]
    [InlineData(""" "standardWeight": { "source": "" } """, "standardWeight.source", "It is blank: write it out.")]
    [InlineData(""" "lengthCategories": { "metric": { "stock": "39 cm" }, "inch": { "stock": "14.9 in" } } """, "lengthCategories.metric", "Bounds must climb from stock over quality, preferred and memorable to trophy, above 0 and up to 300 cm.")]
    [InlineData(""" "lengthCategories": { "inch": { "trophy": "35 in" } } """, "lengthCategories.inch.trophy", "It is more than a tenth off the metric bound: one of the two is misprinted.")]
    [InlineData(""" "lengthCategories": { "source": " " } """, "lengthCategories.source", "It is blank: write it out.")]
    [InlineData(""" "girthDivisor": 28902 """, "girthDivisor", "It lies from 500 to 1200, for inches and pounds; leave it out for the usual 800.")]
    [InlineData(""" "girthDivisor": "900" """, "girthDivisor", "Write a number, without quotes.")]
    public void Read_BiometricsAtFault_SaysWhatToWrite(string field, string path, string remedy)
    {
        var faults = Overlay.Read($$"""{ "species": [{ "key": "walleye", {{field}} }] }""").Faults;

        Assert.Equal([$"crew.json: species/walleye: {path}: {remedy}"], faults.Select(fault => fault.ToString()));
    }

    [Fact]
    public void Read_BiometricsTakenAway_IsNoFault()
    {
        var reading = Overlay.Read("""
            { "species": [{ "key": "walleye", "standardWeight": null, "lengthCategories": null, "girthDivisor": null }] }
            """);

        Assert.Empty(reading.Faults);
        Assert.Null(reading.Knowledge!.Species["walleye"].StandardWeight);
    }
}
