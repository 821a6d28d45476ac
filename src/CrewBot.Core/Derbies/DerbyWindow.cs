namespace CrewBot.Core.Derbies;

/// <summary>When fish may be caught and when word of them may arrive. Instants are compared, never clock faces.</summary>
public sealed record DerbyWindow
{
    /// <param name="starts">The first instant that counts.</param>
    /// <param name="ends">The last instant that counts, after <paramref name="starts"/>.</param>
    /// <param name="grace">How long after the end word of a fish caught in time is still taken, from zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The window ends before it starts, or the grace is negative.</exception>
    public DerbyWindow(DateTimeOffset starts, DateTimeOffset ends, TimeSpan grace)
    {
        if (ends <= starts)
        {
            throw new ArgumentOutOfRangeException(nameof(ends), ends, "Must be after the start.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(grace, TimeSpan.Zero);
        Starts = starts;
        Ends = ends;
        Grace = grace;
    }

    public DateTimeOffset Starts { get; }

    public DateTimeOffset Ends { get; }

    public TimeSpan Grace { get; }

    /// <summary>The last instant at which word of a fish is taken without a steward.</summary>
    public DateTimeOffset LastWord => Ends + Grace;

    /// <summary>Was a fish caught in time? Both ends count.</summary>
    public bool Holds(DateTimeOffset caughtAt) => caughtAt >= Starts && caughtAt <= Ends;
}
