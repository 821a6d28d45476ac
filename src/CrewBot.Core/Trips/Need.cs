using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Trips;

/// <summary>What a trip needs of something, and what there is.</summary>
/// <param name="Rule">The rule that asks for it.</param>
/// <param name="Needed">How many: seats for a need of seats, else pieces.</param>
/// <param name="Offered">How many are brought.</param>
/// <param name="Working">How the numbers came about; its quantities are written by whoever shows it.</param>
public sealed record Need(NeedRule Rule, int Needed, int Offered, FormattableString Working)
{
    public int Missing => Math.Max(0, Needed - Offered);

    public bool IsMet => Missing == 0;
}
