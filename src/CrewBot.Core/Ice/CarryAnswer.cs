namespace CrewBot.Core.Ice;

/// <summary>What was measured beside what is required.</summary>
/// <param name="Requirement">What published rules ask for.</param>
/// <param name="Standing">What the reports come to.</param>
/// <param name="Verdict">How the two stand.</param>
public sealed record CarryAnswer(Requirement Requirement, IceStanding Standing, CarryVerdict Verdict)
{
    /// <summary>Compares, to the nanometre: the units that anybody speaks in change nothing.</summary>
    public static CarryAnswer Of(Requirement requirement, IceStanding standing) => new(requirement, standing, VerdictOf(requirement, standing));

    private static CarryVerdict VerdictOf(Requirement requirement, IceStanding standing)
    {
        if (standing.Blocking.Count > 0)
        {
            return CarryVerdict.StayOff;
        }

        if (standing.Least is not { } least)
        {
            return CarryVerdict.NoAnswer;
        }

        var measured = IceLength.Measured(least);
        return measured < IceLength.Required(ProjectFigures.HardStop) ? CarryVerdict.StayOff
            : requirement.Thickness is not { } required ? CarryVerdict.NoAnswer
            : measured < IceLength.Required(required) ? CarryVerdict.LessThanRequired
            : CarryVerdict.MeetsTheFigure;
    }
}
