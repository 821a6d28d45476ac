namespace CrewBot.Core.Effort;

/// <summary>What a two-sided interval leaves out at either end.</summary>
internal static class Tail
{
    public static double Of(double confidence) => confidence is > 0 and < 1
        ? (1 - confidence) / 2
        : throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Must be above 0 and below 1.");
}
