namespace CrewBot.Storage.Connections;

/// <summary>A change that gives something back.</summary>
/// <param name="change">Makes the change; may be run again when the group it belonged to could not be committed.</param>
/// <param name="cancellationToken">Gives up before the change is made.</param>
internal sealed class PendingWrite<T>(Func<Task<T>> change, CancellationToken cancellationToken) : PendingWrite(cancellationToken)
{
    // Callers go on elsewhere: the writer has others to serve.
    private readonly TaskCompletionSource<T> _told = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private T? _result;

    public Task<T> Told => _told.Task;

    public override async Task MakeAsync() => _result = await change();

    public override void Tell()
    {
        switch (Fault)
        {
            case null:
                _told.SetResult(_result!);
                break;
            case OperationCanceledException:
                _told.SetCanceled(CancellationToken);
                break;
            default:
                _told.SetException(Fault);
                break;
        }
    }
}
