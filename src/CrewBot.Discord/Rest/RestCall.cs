namespace CrewBot.Discord.Rest;

/// <summary>A request on its way, from the first attempt to the last.</summary>
internal sealed class RestCall(RestRequest request, TimeProvider clock)
{
    private readonly long _started = clock.GetTimestamp();

    public RestRequest Request { get; } = request;
    public Route Route => Request.Route;
    public int Attempts { get; private set; }
    public DiscordApiException? LastFailure { get; private set; }

    public TimeSpan PatienceLeft => Request.Patience - clock.GetElapsedTime(_started);

    public void Begin() => Attempts++;

    public Attempt Failed(DiscordApiException failure)
    {
        LastFailure = failure;
        return Attempt.Failed(failure);
    }

    public Attempt Retry(DiscordApiException failure, TimeSpan? after = null)
    {
        LastFailure = failure;
        return Attempt.Retry(failure, after);
    }
}
