namespace CrewBot.Discord.Gateway;

/// <summary>
/// Remembers how the last attempts went and says how long to wait. Connecting and starting sessions have a pace each,
/// and only a session that has been active for a minute counts as a success.
/// </summary>
internal sealed class ReconnectPace
{
    private const int MostFailedResumes = 3;
    private static readonly TimeSpan Proven = TimeSpan.FromMinutes(1);

    private int _connects;
    private int _identifies;
    private int _failedResumes;

    /// <summary>The place to resume at did not greet: try the general one.</summary>
    public bool ResumePlaceFailed { get; private set; }

    /// <summary>The session has been refused too often to try again.</summary>
    public bool SessionIsLost => _failedResumes >= MostFailedResumes;

    /// <param name="reached">The furthest stage of the connection that is over.</param>
    /// <param name="activeFor">How long its session was active; null when it never was.</param>
    public void Record(ConnectionStage reached, TimeSpan? activeFor)
    {
        _failedResumes = reached is ConnectionStage.Resuming ? _failedResumes + 1
            : reached >= ConnectionStage.Identifying ? 0
            : _failedResumes;
        ResumePlaceFailed = reached < ConnectionStage.Identifying;
        if (activeFor >= Proven)
        {
            _connects = 0;
            _identifies = 0;
        }
    }

    /// <summary>Counts a session start that was sent.</summary>
    public void CountIdentify() => _identifies++;

    /// <summary>The wait before the next attempt, which resumes a session or starts one; random is from 0 to 1.</summary>
    public TimeSpan Next(bool identifying, double random)
    {
        var connect = Backoff.Connect(_connects++, random);
        return identifying ? Max(connect, Backoff.Identify(_identifies, random)) : connect;
    }

    private static TimeSpan Max(TimeSpan first, TimeSpan second) => first > second ? first : second;
}
