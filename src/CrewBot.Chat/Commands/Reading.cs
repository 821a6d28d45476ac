namespace CrewBot.Chat.Commands;

/// <summary>What became of reading a text: a value, or what is wrong with it.</summary>
/// <typeparam name="T">The value.</typeparam>
public readonly record struct Reading<T>
{
    private Reading(T? value, string? fault) => (Value, Fault) = (value, fault);

    /// <summary>The value; meaningless when there is a fault.</summary>
    public T? Value { get; }

    /// <summary>What was given and what is accepted, in a line; null when it was read.</summary>
    public string? Fault { get; }

    public static implicit operator Reading<T>(T value) => new(value, null);

    public static implicit operator Reading<T>(Misread misread) => new(default, misread.Why);
}
