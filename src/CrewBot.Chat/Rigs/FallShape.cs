using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Rigs;

/// <summary>How a body falls, as a share of a bare ball's speed.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Fall">The share; a judgement for anything but a ball.</param>
public sealed record FallShape(string Name, Spread<double> Fall)
{
    public static FallShape Ball { get; } = new("ball", new Spread<double> { Low = 1, High = 1 });

    public bool IsExact => Fall.Low == Fall.High;
}
