using System.Collections.Concurrent;

namespace CrewBot.Discord.StandIn;

/// <summary>How the stand-in behaves; all of it may be changed while it runs.</summary>
public sealed class StandInSettings
{
    public string Token { get; set; } = "MTAxMjM0NTY3ODkwMTIzNDU2.Gabcde.stand-in-marker-token-0123456789abcdef";
    public ulong ApplicationId { get; set; } = 1012345678901234560;
    public TimeSpan HeartbeatInterval { get; set; } = TimeSpan.FromSeconds(41.25);
    public int AdvisedShards { get; set; } = 1;
    public int StartsLeft { get; set; } = 1000;
    public int MaxConcurrency { get; set; } = 1;

    /// <summary>What servers are called, by their ids.</summary>
    public ConcurrentDictionary<string, string> GuildNames { get; } = new() { [StandInData.Id(StandInData.GuildId)] = "Loon Basin Crew" };

    /// <summary>Refuses an upgrade without a User-Agent, as some compatible servers do; the platform itself does not.</summary>
    public bool TurnsNamelessAway { get; set; } = true;

    /// <summary>Off: the socket opens and nothing is said.</summary>
    public bool Greets { get; set; } = true;

    /// <summary>Off: heartbeats vanish.</summary>
    public bool AcknowledgesHeartbeats { get; set; } = true;

    /// <summary>Off: identify and resume are never answered.</summary>
    public bool AnswersOpening { get; set; } = true;

    /// <summary>Off: every resume is refused as an invalid session.</summary>
    public bool AcceptsResume { get; set; } = true;

    /// <summary>Off: READY names no place to resume at.</summary>
    public bool NamesResumeAddress { get; set; } = true;

    /// <summary>Off: registration answers leave the ids out.</summary>
    public bool GivesCommandIds { get; set; } = true;

    /// <summary>Adds rate-limit headers for a bucket of this size and window to each answer.</summary>
    public (int Limit, double WindowSeconds)? Bucket { get; set; }

    /// <summary>Off for long runs: requests and frames are not kept.</summary>
    public bool Records { get; set; } = true;
}
