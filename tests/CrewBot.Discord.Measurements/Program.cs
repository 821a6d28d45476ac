using CrewBot.Discord.Measurements;

// Measures the published program, and beside it an echo of the same client that answers a fixed card.
return args switch
{
    ["relay"] => await RelayMeasurement.RunAsync(),
    ["short"] => await Measurement.RunAsync(rounds: 1, memoryInteractions: 100_000),
    _ => await Measurement.RunAsync(rounds: 3, memoryInteractions: 100_000),
};
