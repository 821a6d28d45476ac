using CrewBot.Chat.Commands;
using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>Takes each interaction to what answers it, once.</summary>
internal sealed class InteractionRouter(
    DiscordApi api,
    CommandCatalog catalog,
    Dispatcher dispatcher,
    PressCodec codec,
    CardWriter cards,
    TimeProvider clock,
    ILogger<InteractionRouter> log) : IInteractionHandler
{
    private const string OldButton = "That button is from an earlier version, or too long ago. Ask again.";
    private static readonly TimeSpan FirstAnswerWithin = TimeSpan.FromSeconds(3);

    private readonly SeenInteractions _seen = new();
    private readonly AnswerForm _forms = new(catalog, codec);
    private readonly Suggestions _suggestions = new(catalog);
    private readonly IReadOnlyList<MenuCommand> _menu = MenuCommand.In(catalog);

    public async Task HandleAsync(ReceivedInteraction received, CancellationToken cancellationToken)
    {
        var interaction = received.Interaction;
        if (!_seen.TryAdd(interaction.Id))
        {
            log.LogDebug("{Interaction} came again and is not handled again", interaction);
            return;
        }

        switch (interaction)
        {
            case { Type: InteractionType.Autocomplete, Data: { } data }:
                await SuggestAsync(received, data, cancellationToken);
                break;
            case { Type: InteractionType.Command, Data: { Type: CommandType.Message or CommandType.User } data }:
                await OnMenuAsync(received, data, cancellationToken);
                break;
            case { Type: InteractionType.Command, Data: { } data }:
                await OnCommandAsync(received, data, cancellationToken);
                break;
            case { Type: InteractionType.Component, Data: { } data }:
                await OnPressAsync(received, data, cancellationToken);
                break;
            case { Type: InteractionType.ModalSubmit, Data: { } data }:
                await OnFormAsync(received, data, cancellationToken);
                break;
            default:
                log.LogInformation("{Interaction} is of an unknown kind and passed over", interaction);
                break;
        }
    }

    public Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken) =>
        received.Interaction.Type is InteractionType.Autocomplete
            ? Task.CompletedTask
            : SayAsync(received, "Too much is going on right now. Try again in a moment.", cancellationToken);

    private async Task OnCommandAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        var (path, leaves) = CallReader.Read(data);
        var options = CallReader.Texts(leaves, data.Resolved);
        if (_forms.For(path, options) is { } form)
        {
            await api.AnswerAsync(
                received.Interaction.Id, received.Interaction.Token, form, WireJson.Default.ModalResponse, [],
                TimeLeft(received), cancellationToken);
            return;
        }

        await AnswerAsync(received, path, options, CardPurpose.Answer, AnswerPlan.Private, cancellationToken);
    }

    private async Task OnMenuAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        var command = _menu.FirstOrDefault(command => command.Name == data.Name);
        var words = MenuCommand.TextOf(data);
        if (command is null || words.Length == 0)
        {
            await SayAsync(
                received,
                command is null ? "That menu command is gone. Ask again with a slash command." : "There is no text in that message.",
                cancellationToken);
            return;
        }

        var options = new Dictionary<string, string> { [command.Words.Name] = words };
        await AnswerAsync(received, command.Info.Path, options, CardPurpose.Answer, AnswerPlan.Private, cancellationToken);
    }

    private async Task OnPressAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        var id = data is { CustomId: ButtonRows.ListId, Values: [var chosen, ..] } ? chosen : data.CustomId;
        if (codec.Read(id) is not { Kind: not PressKind.Form } press)
        {
            await SayAsync(received, OldButton, cancellationToken);
            return;
        }

        // Stepping through one's own private card changes it; a card that the crew sees stays as it is.
        var isOwnCard = received.Interaction.Message?.Flags?.HasFlag(MessageFlags.Ephemeral) is true;
        var (purpose, plan) = press.Kind switch
        {
            PressKind.Why => (CardPurpose.Why, AnswerPlan.Private),
            PressKind.Share => (CardPurpose.Shared, AnswerPlan.Posted),
            _ => (CardPurpose.Answer, isOwnCard ? AnswerPlan.InPlace : AnswerPlan.Private),
        };
        await AnswerAsync(received, press.Path, press.Options, purpose, plan, cancellationToken);
    }

    private async Task OnFormAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        if (codec.Read(data.CustomId) is not { Kind: PressKind.Form } form)
        {
            await SayAsync(received, OldButton, cancellationToken);
            return;
        }

        var options = new Dictionary<string, string>(form.Options);
        foreach (var (name, text) in AnswerForm.Read(data.Components))
        {
            options[name] = text;
        }

        await AnswerAsync(received, form.Path, options, CardPurpose.Answer, AnswerPlan.Private, cancellationToken);
    }

    private async Task AnswerAsync(
        ReceivedInteraction received,
        string path,
        IReadOnlyDictionary<string, string> options,
        CardPurpose purpose,
        AnswerPlan plan,
        CancellationToken cancellationToken)
    {
        var interaction = received.Interaction;
        using var exchange = new Exchange(api, received, plan, clock, log, cancellationToken);
        var call = new CommandCall(
            interaction.Id.ToString(), clock.GetUtcNow(), CallerReader.Read(interaction), path, options)
        {
            Place = interaction.ChannelId?.ToString(),
        };
        var reply = await dispatcher.AnswerAsync(call, cancellationToken);
        await exchange.AnswerAsync(cards.Write(reply, purpose));
    }

    private async Task SayAsync(ReceivedInteraction received, string line, CancellationToken cancellationToken)
    {
        using var exchange = new Exchange(api, received, AnswerPlan.Private, clock, log, cancellationToken);
        await exchange.AnswerAsync(CardWriter.Plain(line));
    }

    private async Task SuggestAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        try
        {
            await api.AnswerAsync(
                received.Interaction.Id, received.Interaction.Token, _suggestions.For(data),
                WireJson.Default.ChoicesResponse, [], TimeLeft(received), cancellationToken);
        }
        catch (DiscordApiException late)
        {
            // The next letter was typed already; the platform no longer waits for this list.
            log.LogDebug("{Interaction}: no suggestions: {Reason}", received.Interaction, late.Message);
        }
    }

    private TimeSpan TimeLeft(ReceivedInteraction received) =>
        FirstAnswerWithin - clock.GetElapsedTime(received.ReceivedAt);
}
