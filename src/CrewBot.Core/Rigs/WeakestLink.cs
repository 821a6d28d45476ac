using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Where a rig gives way, and at what pull.</summary>
/// <param name="Place">The place likeliest to go first: the one with the lowest low end.</param>
/// <param name="Low">The pull at which the rig may already break.</param>
/// <param name="High">The pull that no rig of these parts outlasts.</param>
/// <remarks>
/// Every link carries the whole load once, so the smallest rules and efficiencies do not multiply: two 85 % knots leave
/// 85 %, not 72 %.
/// </remarks>
public sealed record WeakestLink(string Place, Force Low, Force High)
{
    /// <summary>Finds the weakest of a rig's links.</summary>
    /// <param name="links">The links from rod to hook, at least one; of equals, the first is named.</param>
    /// <exception cref="ArgumentException"><paramref name="links"/> is empty.</exception>
    public static WeakestLink Of(IEnumerable<Link> links)
    {
        Link? weakest = null;
        var (low, high) = (double.PositiveInfinity, double.PositiveInfinity);
        foreach (var link in links)
        {
            var newtons = link.Low.Newtons;
            if (newtons < low)
            {
                (weakest, low) = (link, newtons);
            }

            high = Math.Min(high, link.High.Newtons);
        }

        return weakest is null
            ? throw new ArgumentException("A rig has at least one link.", nameof(links))
            : new WeakestLink(weakest.Place, weakest.Low, Force.FromNewtons(high));
    }

    /// <summary>Tells whether one link is sure to part before another, whatever the knots turn out to hold.</summary>
    public static bool SurelyBefore(Link one, Link other) => one.High.Newtons < other.Low.Newtons;
}
