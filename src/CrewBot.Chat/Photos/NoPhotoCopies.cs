namespace CrewBot.Chat.Photos;

/// <summary>Where nobody wants copies.</summary>
public sealed class NoPhotoCopies : IPhotoCopies
{
    public Task KeepAsync(string crew, string hash, ReadOnlyMemory<byte> photo, CancellationToken cancellationToken) => Task.CompletedTask;

    public int Delete(string crew, IReadOnlyCollection<string> hashes) => 0;
}
