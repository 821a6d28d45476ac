namespace CrewBot.Core.Fish;

/// <summary>What a weight was worked out from.</summary>
public enum WeightBasis
{
    /// <summary>Length and girth: this fish's own shape.</summary>
    LengthAndGirth,

    /// <summary>Length alone: what such a fish weighs in good condition.</summary>
    StandardWeight,
}
