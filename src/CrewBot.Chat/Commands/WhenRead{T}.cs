using System.Collections;

namespace CrewBot.Chat.Commands;

/// <summary>A part of a reply that is made when somebody reads it: most people never ask why.</summary>
/// <typeparam name="T">What it lists.</typeparam>
/// <param name="make">Makes it; pure.</param>
internal sealed class WhenRead<T>(Func<IEnumerable<T>> make) : IReadOnlyList<T>
{
    private readonly Lazy<T[]> _made = new(() => [.. make()]);

    public int Count => _made.Value.Length;

    public T this[int index] => _made.Value[index];

    public IEnumerator<T> GetEnumerator() => _made.Value.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
