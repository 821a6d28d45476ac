using CrewBot.Discord.Measurements;

// Measures the published program, and beside it an echo of the same client that answers a fixed card.
await (args switch
{
    ["relay"] => RelayMeasurement.RunAsync(),
    ["hot-methods", var file] => HotMethods.WriteAsync(file),
    ["pace"] => Measurement.PaceAsync(rounds: 5),
    ["short"] => Measurement.RunAsync(rounds: 1, memoryInteractions: 100_000),
    _ => Measurement.RunAsync(rounds: 3, memoryInteractions: 100_000),
});
