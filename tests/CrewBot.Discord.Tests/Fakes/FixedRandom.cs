namespace CrewBot.Discord.Tests.Fakes;

/// <summary>Always the same share of one.</summary>
internal sealed class FixedRandom(double value) : Random
{
    public override double NextDouble() => value;
}
