using UnitsNet;

namespace CrewBot.Core.Pictures;

/// <summary>One report.</summary>
/// <param name="At">When it was measured.</param>
/// <param name="Thickness">How thick; zero for open water.</param>
/// <param name="Sign">What kind of ice, which decides its sign.</param>
public sealed record ReportedIce(DateTimeOffset At, Length Thickness, IceSign Sign)
{
    /// <summary>Too old to say anything of the ice now, or nobody said when: its sign is hollow.</summary>
    public bool IsOld { get; init; }
}
