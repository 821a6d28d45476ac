namespace CrewBot.Chat.Commands;

/// <summary>A number that replies may hold, of one kind of quantity.</summary>
/// <typeparam name="T">The quantity, or <see cref="double"/> for a bare number.</typeparam>
/// <param name="Key">Stable name, such as <c>drop.time</c>.</param>
/// <param name="Unit">The unit as scripts see it.</param>
/// <param name="Meaning">What it is, for the docs.</param>
/// <param name="In">Gives the number in that unit.</param>
public sealed record FigureKey<T>(string Key, string Unit, string Meaning, Func<T, double> In)
    : FigureKey(Key, Unit, Meaning)
{
    /// <summary>The figure for a value.</summary>
    /// <param name="value">The value.</param>
    /// <param name="prefix">Set before the key where a reply holds several rigs: <c>alt1.</c></param>
    public Figure Of(T value, string prefix = "") => new(prefix + Key, In(value), Unit);
}
