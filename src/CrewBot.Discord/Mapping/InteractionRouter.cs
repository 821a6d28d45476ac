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
    Callers callers,
    IGivenFiles files,
    IPictureDrawer pictures,
    TimeProvider clock,
    ILogger<InteractionRouter> log)
{
    private const string OldButton = "That button is from an earlier version, or too long ago. Ask again.";
    private static readonly TimeSpan FirstAnswerWithin = TimeSpan.FromSeconds(3);

    private readonly SeenEvents _seen = new();
    private readonly AnswerForm _forms = new(catalog, codec);
    private readonly Suggestions _suggestions = new(dispatcher);
    private readonly NewestOnly _suggesting = new();
    private readonly IReadOnlyList<MenuCommand> _menu = MenuCommand.In(catalog);

    public Task HandleAsync(ReceivedInteraction received, CancellationToken cancellationToken)
    {
        var interaction = received.Interaction;
        if (!_seen.TryAdd(interaction.Id))
        {
            log.LogDebug("{Interaction} came again and is not handled again", interaction);
            return Task.CompletedTask;
        }

        switch (interaction)
        {
            case { Type: InteractionType.Autocomplete, Data: { } data }:
                return SuggestAsync(received, data, cancellationToken);
            case { Type: InteractionType.Command, Data: { Type: CommandType.Message or CommandType.User } data }:
                return OnMenuAsync(received, data, cancellationToken);
            case { Type: InteractionType.Command, Data: { } data }:
                return OnCommandAsync(received, data, cancellationToken);
            case { Type: InteractionType.Component, Data: { } data }:
                return OnPressAsync(received, data, cancellationToken);
            case { Type: InteractionType.ModalSubmit, Data: { } data }:
                return OnFormAsync(received, data, cancellationToken);
            default:
                log.LogInformation("{Interaction} is of an unknown kind and passed over", interaction);
                return Task.CompletedTask;
        }
    }

    public Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken) =>
        received.Interaction.Type is InteractionType.Autocomplete
            ? Task.CompletedTask
            : SayAsync(received, "Too much is going on right now. Try again in a moment.", cancellationToken);

    private Task OnCommandAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        var (path, leaves) = CallReader.Read(data);
        var options = CallReader.Texts(leaves, data.Resolved);
        return _forms.For(path, options) is { } form
            ? OpenAsync(received, form, cancellationToken)
            : AnswerAsync(received, path, options, CardPurpose.Answer, AnswerPlan.Private, cancellationToken);
    }

    private async Task OnMenuAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        var menu = _menu.FirstOrDefault(menu => menu.Name == data.Name && menu.Type == data.Type);
        if (menu?.On(received.Interaction, await CallOfAsync(received, menu.Info.Path, new Dictionary<string, string>(), cancellationToken)) is not { } call)
        {
            await SayAsync(received, "That menu command is gone. Ask again with a slash command.", cancellationToken);
            return;
        }

        if (menu is { Type: CommandType.Message, Info.OnMessage.Fields: [_, ..] fields }
            && await dispatcher.FindShortfallAsync(call, cancellationToken) is { } known
            && _forms.Of(new Press(PressKind.Open, menu.Info.Path, known) { Fields = [.. fields.Select(field => field.Name)] }) is { } form)
        {
            await OpenAsync(received, form, cancellationToken);
            return;
        }

        if (menu is { Type: CommandType.Message, Info.OnMessage.OpensForm: true }
            && await OfferedFormAsync(call, cancellationToken) is { } offered)
        {
            await OpenAsync(received, offered, cancellationToken);
            return;
        }

        await AnswerAsync(received, () => ValueTask.FromResult(call), CardPurpose.Answer, AnswerPlan.Private, cancellationToken);
    }

    private async Task<ModalResponse?> OfferedFormAsync(CommandCall call, CancellationToken cancellationToken)
    {
        var reply = await dispatcher.AnswerAsync(call, cancellationToken);
        return reply.Actions.FirstOrDefault(action => action.Kind is ActionKind.Form) is { } action
            ? _forms.Of(new Press(PressKind.Open, action.Path, action.Options) { Fields = action.Fields })
            : null;
    }

    private async Task OnPressAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        var isList = data.CustomId?.StartsWith(ButtonRows.ListId, StringComparison.Ordinal) is true;
        var id = isList ? data.Values is [var chosen, ..] ? chosen : null : data.CustomId;
        var press = await codec.ReadAsync(id, CrewOf(received), cancellationToken);
        switch (press)
        {
            case null or { Kind: PressKind.Form }:
                await SayAsync(received, OldButton, cancellationToken);
                break;
            case { Kind: PressKind.Open }:
                await (_forms.Of(press) is { } form
                    ? OpenAsync(received, form, cancellationToken)
                    : SayAsync(received, OldButton, cancellationToken));
                break;
            default:
                var (purpose, plan) = press.Kind switch
                {
                    PressKind.Why => (CardPurpose.Why, AnswerPlan.Private),
                    PressKind.Share => (CardPurpose.Shared, AnswerPlan.Posted),
                    PressKind.Picture => (CardPurpose.Picture, AnswerPlan.Private),
                    PressKind.SharePicture => (CardPurpose.SharedPicture, AnswerPlan.Posted),
                    _ => (CardPurpose.Answer, StepFrom(received.Interaction)),
                };
                await AnswerAsync(received, press.Path, press.Options, purpose, plan, cancellationToken);
                break;
        }
    }

    private async Task OnFormAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        if (await codec.ReadAsync(data.CustomId, CrewOf(received), cancellationToken) is not { Kind: PressKind.Form } form)
        {
            await SayAsync(received, OldButton, cancellationToken);
            return;
        }

        var options = AnswerForm.OptionsOf(form, data.Components);
        await AnswerAsync(received, form.Path, options, CardPurpose.Answer, StepFrom(received.Interaction), cancellationToken);
    }

    // Stepping through one's own private card changes it; a card that the crew sees stays as it is.
    private static AnswerPlan StepFrom(Interaction interaction) =>
        interaction.Message?.Flags?.HasFlag(MessageFlags.Ephemeral) is true ? AnswerPlan.InPlace : AnswerPlan.Private;

    // A form is a first answer: it can't follow a deferral.
    private async Task OpenAsync(ReceivedInteraction received, ModalResponse form, CancellationToken cancellationToken)
    {
        await api.AnswerAsync(
            received.Interaction.Id, received.Interaction.Token, form, WireJson.Default.ModalResponse, [],
            TimeLeft(received), cancellationToken);
        await codec.SaveAsync(CrewOf(received), [form.Data.CustomId], cancellationToken);
    }

    private async ValueTask<CommandCall> CallOfAsync(
        ReceivedInteraction received, string path, IReadOnlyDictionary<string, string> options, CancellationToken cancellationToken) =>
        new(
            received.Interaction.Id.ToString(), clock.GetUtcNow(), await callers.OfAsync(received.Interaction, cancellationToken), path, options)
        {
            IsDirect = received.Interaction.GuildId is null,
            Files = files,
            Place = received.Interaction.ChannelId?.ToString(),
        };

    private Task AnswerAsync(
        ReceivedInteraction received,
        string path,
        IReadOnlyDictionary<string, string> options,
        CardPurpose purpose,
        AnswerPlan plan,
        CancellationToken cancellationToken) =>
        AnswerAsync(received, () => CallOfAsync(received, path, options, cancellationToken), purpose, plan, cancellationToken);

    private async Task AnswerAsync(
        ReceivedInteraction received,
        Func<ValueTask<CommandCall>> call,
        CardPurpose purpose,
        AnswerPlan plan,
        CancellationToken cancellationToken)
    {
        using var exchange = new Exchange(api, received, plan, clock, log, cancellationToken);
        var asked = await call();

        // Whoever was told that nobody answered sends it again: what changes something is not done twice.
        if (received.WasMissed && Changes(asked.Path) && !await exchange.DeferNowAsync())
        {
            return;
        }

        var reply = await dispatcher.AnswerAsync(await callers.NamedAsync(asked, catalog, cancellationToken), cancellationToken);
        if (purpose is CardPurpose.Picture or CardPurpose.SharedPicture)
        {
            reply = await pictures.IllustrateAsync(reply, cancellationToken);
        }

        var card = cards.Write(reply, purpose);
        await exchange.AnswerAsync(card);
        await codec.SaveAsync(CrewOf(received), card.Ids, cancellationToken);
    }

    private bool Changes(string path) => catalog.TryFind(path, out var handler) && handler.Info.Writes;

    // What is pressed in a direct message belongs to no crew, whichever the command speaks for.
    private static string? CrewOf(ReceivedInteraction received) => received.Interaction.GuildId?.ToString();

    private async Task SayAsync(ReceivedInteraction received, string line, CancellationToken cancellationToken)
    {
        using var exchange = new Exchange(api, received, AnswerPlan.Private, clock, log, cancellationToken);
        await exchange.AnswerAsync(CardWriter.Plain(line));
    }

    private async Task SuggestAsync(ReceivedInteraction received, InteractionData data, CancellationToken cancellationToken)
    {
        try
        {
            await _suggesting.RunAsync(
                received.Interaction.Actor?.Id ?? default,
                received.Interaction.Id,
                async dropped => await api.AnswerAsync(
                    received.Interaction.Id, received.Interaction.Token,
                    await _suggestions.ForAsync(data, await callers.OfAsync(received.Interaction, dropped), dropped),
                    WireJson.Default.ChoicesResponse, [], TimeLeft(received), dropped),
                cancellationToken);
        }
        catch (OperationCanceledException) when (!cancellationToken.IsCancellationRequested)
        {
            log.LogDebug("{Interaction}: dropped, the next letter was typed", received.Interaction);
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
