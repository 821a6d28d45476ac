using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// The answering of one interaction. There is one first answer: the card itself when it is ready in about a second, else
/// a deferral that the card follows. All deadlines count from the moment the interaction came in.
/// </summary>
internal sealed class Exchange : IDisposable
{
    private static readonly TimeSpan DeferAfter = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan FirstAnswerWithin = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan TokenLives = TimeSpan.FromMinutes(14.5); // fifteen, less a margin

    private readonly DiscordApi api;
    private readonly ReceivedInteraction received;
    private readonly AnswerPlan plan;
    private readonly TimeProvider clock;
    private readonly ILogger log;
    private readonly CancellationToken stopping;
    private readonly ITimer deferral;
    private Task<bool> deferring = Task.FromResult(false);
    private int claimed;

    public Exchange(
        DiscordApi api,
        ReceivedInteraction received,
        AnswerPlan plan,
        TimeProvider clock,
        ILogger log,
        CancellationToken stopping)
    {
        this.api = api;
        this.received = received;
        this.plan = plan;
        this.clock = clock;
        this.log = log;
        this.stopping = stopping;
        var due = DeferAfter - Age;
        deferral = clock.CreateTimer(
            static state => ((Exchange)state!).Defer(),
            this,
            due > TimeSpan.Zero ? due : TimeSpan.Zero,
            Timeout.InfiniteTimeSpan);
    }

    private TimeSpan Age => clock.GetElapsedTime(received.ReceivedAt);

    /// <summary>Sends the card, as the first answer or after the deferral.</summary>
    public async Task AnswerAsync(Card card)
    {
        if (TryClaim())
        {
            var inPlace = plan.UpdatesInPlace && card is { IsPrivate: true, IsProblem: false };
            var response = new MessageResponse(
                inPlace ? ResponseType.UpdateMessage : ResponseType.Message,
                inPlace ? card.Body : card.AsMessage);
            await SendAsync("answer", () => api.AnswerAsync(
                received.Interaction.Id, received.Interaction.Token, response, WireJson.Default.MessageResponse,
                card.Files, FirstAnswerWithin - Age, stopping));
        }
        else if (await deferring)
        {
            await FollowAsync(card);
        }
    }

    public void Dispose() => deferral.Dispose();

    private bool TryClaim() => Interlocked.Exchange(ref claimed, 1) == 0;

    private void Defer()
    {
        var sent = new TaskCompletionSource<bool>(TaskCreationOptions.RunContinuationsAsynchronously);
        deferring = sent.Task; // in place before the claim, so that whoever loses the claim finds it
        if (TryClaim())
        {
            _ = DeferAsync(sent);
        }
    }

    private async Task DeferAsync(TaskCompletionSource<bool> sent)
    {
        var type = plan.UpdatesInPlace ? ResponseType.DeferredUpdate : ResponseType.DeferredMessage;
        var flags = plan is { UpdatesInPlace: false, IsPrivate: true } ? new DeferredFlags(MessageFlags.Ephemeral) : null;
        sent.SetResult(await SendAsync("defer", () => api.AnswerAsync(
            received.Interaction.Id, received.Interaction.Token, new DeferredResponse(type, flags),
            WireJson.Default.DeferredResponse, [], FirstAnswerWithin - Age, stopping)));
    }

    private async Task FollowAsync(Card card)
    {
        if (Age > TokenLives || received.ApplicationId is not { } application)
        {
            log.LogWarning("{Interaction}: finished after {Seconds:0} s, too late to be shown",
                received.Interaction, Age.TotalSeconds);
            return;
        }

        var token = received.Interaction.Token;
        var fitsOriginal = plan.UpdatesInPlace
            ? card is { IsPrivate: true, IsProblem: false }
            : card.IsPrivate == plan.IsPrivate;
        if (fitsOriginal)
        {
            await SendAsync("edit", () => api.EditOriginalAsync(application, token, card.Body, card.Files, stopping));
            return;
        }

        await SendAsync("follow up", () => api.FollowUpAsync(application, token, card.AsMessage, card.Files, stopping));
        if (!plan.UpdatesInPlace)
        {
            var note = CardWriter.Plain(card.IsPrivate ? "Answered to the asker alone." : "Posted for the crew.");
            await SendAsync("edit", () => api.EditOriginalAsync(application, token, note.Body, [], stopping));
        }
    }

    /// <summary>Sends, and logs what the platform no longer takes: a late token is nobody's fault to throw about.</summary>
    private async Task<bool> SendAsync(string what, Func<Task> send)
    {
        try
        {
            await send();
            return true;
        }
        catch (DiscordApiException refused)
        {
            log.LogWarning("{Interaction}: could not {What} after {Age:0.00} s: {Reason}",
                received.Interaction, what, Age.TotalSeconds, refused.Message);
            return false;
        }
    }
}
