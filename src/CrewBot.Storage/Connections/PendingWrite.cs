namespace CrewBot.Storage.Connections;

/// <summary>A change that waits for the writer, and its caller that waits for the change.</summary>
internal abstract class PendingWrite(CancellationToken cancellationToken)
{
    /// <summary>Why it could not be made; null while it can.</summary>
    public Exception? Fault { get; set; }

    /// <summary>The caller no longer waits: the change must not be made.</summary>
    public bool IsGivenUp => cancellationToken.IsCancellationRequested;

    protected CancellationToken CancellationToken => cancellationToken;

    /// <summary>Makes the change inside the transaction that is open.</summary>
    public abstract Task MakeAsync();

    /// <summary>Tells the caller, once it is on the disk or has failed.</summary>
    public abstract void Tell();
}
