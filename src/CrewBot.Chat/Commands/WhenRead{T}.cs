using System.Collections;

namespace CrewBot.Chat.Commands;

/// <summary>A part of a reply that is made when somebody reads it: most people never ask why.</summary>
/// <typeparam name="T">What it lists.</typeparam>
/// <param name="make">Makes it; pure.</param>
internal sealed class WhenRead<T>(Func<IEnumerable<T>> make) : IReadOnlyList<T>
{
    private T[] Made => field ??= [.. make()];

    public int Count => Made.Length;

    public T this[int index] => Made[index];

    public IEnumerator<T> GetEnumerator() => Made.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
