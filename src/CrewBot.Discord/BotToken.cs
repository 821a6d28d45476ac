using System.Buffers;

namespace CrewBot.Discord;

/// <summary>The bot's secret. It cannot be printed: only this project's request builders see the value.</summary>
public sealed class BotToken
{
    private const int PartsOfAToken = 3;
    private static readonly SearchValues<char> TokenCharacters = SearchValues.Create(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.=");

    /// <param name="value">The token as copied, without the word "Bot"; blanks around it are dropped.</param>
    /// <exception cref="ArgumentException">Nothing is left once blanks are dropped, or a control character is inside.</exception>
    public BotToken(string value)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value);
        var trimmed = value.Trim();
        if (trimmed.Any(char.IsControl))
        {
            throw new ArgumentException("The bot token contains a control character.", nameof(value));
        }

        Value = trimmed;
    }

    /// <summary>
    /// Whether it has the usual shape: three parts with dots between. A compatible server may hand out another shape.
    /// </summary>
    public bool HasUsualShape =>
        Value.Split('.').Length == PartsOfAToken && !Value.AsSpan().ContainsAnyExcept(TokenCharacters);

    internal string Value { get; }

    public override string ToString() => "(bot token)";
}
