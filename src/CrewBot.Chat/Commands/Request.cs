using System.Diagnostics.CodeAnalysis;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Commands;

/// <summary>A command whose options have been read.</summary>
/// <param name="call">The call as delivered.</param>
/// <param name="info">The command.</param>
/// <param name="values">The values by option name.</param>
/// <param name="expansion">What a shorthand was read as; null when there was none.</param>
public sealed class Request(CommandCall call, CommandInfo info, Dictionary<string, object> values, Expansion? expansion)
{
    public string Id => call.Id;

    /// <summary>Family and verb.</summary>
    public string Path => info.Path;

    public DateTimeOffset At => call.At;

    public Caller Caller => call.Caller;

    /// <summary>Where it was given, a place that posts can go to; null where there is none.</summary>
    public string? Place => call.Place;

    public CrewUnits Units => call.Caller.Units;

    /// <summary>Opens the files that the options name.</summary>
    public IGivenFiles Files => call.Files;

    /// <summary>How quantities are written for this caller.</summary>
    public Showing Show { get; } = Showing.In(call.Caller.Units);

    /// <summary>What a shorthand was read as; null when there was none.</summary>
    public Expansion? Expansion => expansion;

    /// <summary>The options as they were written; the words of a shorthand have become options by now.</summary>
    public IReadOnlyDictionary<string, string> Written { get; } = info.Shorthand is { } shorthand && call.Options.ContainsKey(shorthand.Words.Name)
        ? call.Options.Where(option => option.Key != shorthand.Words.Name).ToDictionary()
        : call.Options;

    /// <summary>The whole command as a person would type it, without shorthand.</summary>
    public string Command => CommandLine.Write(info.Path, Written);

    public bool Has(CommandOption option) => values.ContainsKey(option.Name);

    /// <summary>The value of a required option.</summary>
    /// <exception cref="InvalidOperationException">The option is not there: ask <see cref="TryGet"/> about optional ones.</exception>
    public T Get<T>(CommandOption<T> option) => TryGet(option, out var value)
        ? value
        : throw new InvalidOperationException($"Option {option.Name} has no value.");

    public bool TryGet<T>(CommandOption<T> option, [MaybeNullWhen(false)] out T value)
    {
        var found = values.TryGetValue(option.Name, out var read);
        value = found ? (T)read! : default;
        return found;
    }

    public T GetOr<T>(CommandOption<T> option, T otherwise) => TryGet(option, out var value) ? value : otherwise;
}
