namespace CrewBot.Core.Rigs;

/// <summary>What became of planning: a plan, or what stands in the way of every rig.</summary>
public sealed record RigPlanning
{
    /// <summary>Null when there is an obstacle.</summary>
    public RigPlan? Plan { get; init; }

    /// <summary>What to give up, in a sentence; null when there is a plan.</summary>
    public FormattableString? Obstacle { get; init; }
}
