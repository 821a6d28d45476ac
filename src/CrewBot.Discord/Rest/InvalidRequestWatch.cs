namespace CrewBot.Discord.Rest;

/// <summary>
/// Counts answers of 401, 403 and 429. Ten thousand in ten minutes ban the address, so traffic stops long before.
/// </summary>
internal sealed class InvalidRequestWatch(TimeProvider clock)
{
    /// <summary>From here on only answers to people still go out.</summary>
    public const int StopOrdinary = 1_000;

    /// <summary>From here on nothing goes out.</summary>
    public const int StopEverything = 9_000;

    private const int Slots = 20;
    private static readonly TimeSpan SlotLength = TimeSpan.FromSeconds(30);

    private readonly Lock _gate = new();
    private readonly int[] _counts = new int[Slots + 1]; // one more than the window: the oldest is only partly outside
    private readonly long _start = clock.GetTimestamp();
    private long _newest;

    public int InTheLastTenMinutes
    {
        get
        {
            lock (_gate)
            {
                Forget();
                return _counts.Sum();
            }
        }
    }

    public void Count()
    {
        lock (_gate)
        {
            Forget();
            _counts[_newest % _counts.Length]++;
        }
    }

    public bool Allows(Route route)
    {
        var counted = InTheLastTenMinutes;
        return counted < (route.ByInteractionToken ? StopEverything : StopOrdinary);
    }

    private void Forget()
    {
        var current = (long)(clock.GetElapsedTime(_start) / SlotLength);
        var passed = Math.Min(current - _newest, _counts.Length);
        for (var step = 1; step <= passed; step++)
        {
            _counts[(current - passed + step) % _counts.Length] = 0;
        }

        _newest = current;
    }
}
