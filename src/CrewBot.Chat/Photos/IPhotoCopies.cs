namespace CrewBot.Chat.Photos;

/// <summary>Copies of the photos of fish, for whoever runs CrewBot and wants them kept. A fish does not depend on them.</summary>
public interface IPhotoCopies
{
    /// <summary>Keeps a copy, unless none are wanted or there is no more room for them.</summary>
    /// <param name="crew">The crew's key.</param>
    /// <param name="hash">The SHA-256 of the photo in hexadecimal digits.</param>
    /// <param name="photo">The whole file.</param>
    /// <param name="cancellationToken">Stops keeping.</param>
    Task KeepAsync(string crew, string hash, ReadOnlyMemory<byte> photo, CancellationToken cancellationToken);

    /// <summary>Deletes copies.</summary>
    /// <returns>How many there were.</returns>
    /// <exception cref="IOException">One can't be deleted.</exception>
    int Delete(string crew, IReadOnlyCollection<string> hashes);
}
