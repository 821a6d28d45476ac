namespace CrewBot.Discord.Gateway;

/// <summary>What is needed to take up a broken-off session again.</summary>
internal sealed class GatewaySession
{
    public string? Id { get; private set; }

    /// <summary>Where to resume; a compatible server may not name a place.</summary>
    public Uri? ResumeAddress { get; private set; }

    public long? Sequence { get; private set; }
    public bool CanResume => Id is not null && Sequence is not null;

    /// <summary>A session that an earlier process put by.</summary>
    public static GatewaySession Of(SavedSession saved)
    {
        var session = new GatewaySession();
        session.Begin(saved.Id, saved.Address);
        session.Count(saved.Sequence);
        return session;
    }

    public void Begin(string? id, string? resumeAddress)
    {
        Id = id;
        ResumeAddress = Uri.TryCreate(resumeAddress, UriKind.Absolute, out var address) ? address : null;
    }

    /// <summary>Counts an event; one that comes late does not set the count back.</summary>
    public void Count(long sequence) => Sequence = Math.Max(Sequence ?? long.MinValue, sequence);

    public void Forget()
    {
        Id = null;
        ResumeAddress = null;
        Sequence = null;
    }
}
