using System.Text.Json;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>Brings the registered commands in line with the declared ones, writing only when they differ.</summary>
internal sealed class Registration(
    DiscordApi api, CommandDefinitions definitions, DiscordOptions options, ILogger<Registration> log)
{
    /// <summary>Compares and writes. A failure is logged and keeps nobody from the commands that are registered.</summary>
    public async Task RunAsync(CancellationToken cancellationToken)
    {
        var guild = Snowflake.TryParse(options.TestGuildId, out var id) ? id : (Snowflake?)null;
        var wanted = definitions.Write(global: guild is null);
        if (DefinitionLimits.Faults(wanted) is [_, ..] faults)
        {
            log.LogError("Commands not registered: {Faults}", string.Join("; ", faults));
            return;
        }

        try
        {
            var application = (await api.GetApplicationAsync(cancellationToken)).Id
                ?? throw new DiscordApiException(Routes.CurrentApplication, "gave no id");
            var registered = await api.ListCommandsAsync(application, guild, cancellationToken);
            if (Canonical(registered) == Canonical(wanted))
            {
                log.LogInformation("{Count} commands are registered as they should be", wanted.Length);
                return;
            }

            await api.OverwriteCommandsAsync(application, guild, wanted, cancellationToken);
            log.LogInformation("{Count} commands registered", wanted.Length);
        }
        catch (DiscordApiException refused)
        {
            log.LogWarning("Commands not registered, those that were stay: {Reason}", refused.Message);
        }
    }

    /// <summary>One spelling for definitions that mean the same: no ids, no defaults, no empty lists, one order.</summary>
    internal static string Canonical(IEnumerable<CommandDefinition> commands) => JsonSerializer.Serialize(
        commands
            .Select(command => command with
            {
                Id = null,
                Type = command.Type ?? CommandType.Slash,
                Description = NullIfEmpty(command.Description),
                DescriptionLocalizations = Sorted(command.DescriptionLocalizations),
                Options = Canonical(command.Options),
                Contexts = command.Contexts is { Count: > 0 } contexts ? [.. contexts.Order()] : null,
                IntegrationTypes = command.IntegrationTypes is null or [0] ? null : [.. command.IntegrationTypes.Order()],
            })
            .OrderBy(command => command.Type)
            .ThenBy(command => command.Name, StringComparer.Ordinal)
            .ToArray(),
        WireJson.Default.CommandDefinitionArray);

    private static IReadOnlyList<CommandOptionDefinition>? Canonical(IReadOnlyList<CommandOptionDefinition>? options) =>
        options is { Count: > 0 }
            ? [.. options.Select(option => option with
            {
                DescriptionLocalizations = Sorted(option.DescriptionLocalizations),
                Required = option.Required is true ? true : null,
                Autocomplete = option.Autocomplete is true ? true : null,
                Options = Canonical(option.Options),
                Choices = option.Choices is { Count: > 0 } choices
                    ? [.. choices.Select(choice => choice with { NameLocalizations = Sorted(choice.NameLocalizations) })]
                    : null,
            })]
            : null;

    private static SortedDictionary<string, string>? Sorted(IReadOnlyDictionary<string, string>? texts) =>
        texts is { Count: > 0 }
            ? new SortedDictionary<string, string>(texts.ToDictionary(), StringComparer.Ordinal)
            : null;

    private static string? NullIfEmpty(string? text) => string.IsNullOrEmpty(text) ? null : text;
}
