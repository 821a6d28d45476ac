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

    private readonly DiscordApi _api;
    private readonly ReceivedInteraction _received;
    private readonly AnswerPlan _plan;
    private readonly TimeProvider _clock;
    private readonly ILogger _log;
    private readonly CancellationToken _stopping;
    private readonly ITimer _deferral;
    private Task<bool>? _deferring;
    private int _claimed;

    public Exchange(
        DiscordApi api,
        ReceivedInteraction received,
        AnswerPlan plan,
        TimeProvider clock,
        ILogger log,
        CancellationToken stopping)
    {
        _api = api;
        _received = received;
        _plan = plan;
        _clock = clock;
        _log = log;
        _stopping = stopping;
        var due = DeferAfter - Age;
        _deferral = clock.CreateTimer(
            static state => ((Exchange)state!).Defer(),
            this,
            due > TimeSpan.Zero ? due : TimeSpan.Zero,
            Timeout.InfiniteTimeSpan);
    }

    private TimeSpan Age => _clock.GetElapsedTime(_received.ReceivedAt);

    /// <summary>Sends the card, as the first answer or after the deferral.</summary>
    public async Task AnswerAsync(Card card)
    {
        if (TryClaim())
        {
            var inPlace = _plan.UpdatesInPlace && card is { IsPrivate: true, IsProblem: false };
            var response = new MessageResponse(
                inPlace ? ResponseType.UpdateMessage : ResponseType.Message,
                inPlace ? card.Body : card.AsMessage);
            await SendAsync("answer", _api.AnswerAsync(
                _received.Interaction.Id, _received.Interaction.Token, response, WireJson.Default.MessageResponse,
                card.Files, FirstAnswerWithin - Age, _stopping));
        }
        else if (_deferring is { } deferring && await deferring)
        {
            await FollowAsync(card);
        }
    }

    /// <summary>Defers at once.</summary>
    /// <returns>Whether the platform took it: if not, nobody waits for an answer any more.</returns>
    public Task<bool> DeferNowAsync()
    {
        Defer();
        return _deferring!;
    }

    public void Dispose() => _deferral.Dispose();

    private bool TryClaim() => Interlocked.Exchange(ref _claimed, 1) == 0;

    private void Defer()
    {
        var sent = new TaskCompletionSource<bool>(TaskCreationOptions.RunContinuationsAsynchronously);

        // In place before the claim, so that whoever loses the claim finds it.
        if (Interlocked.CompareExchange(ref _deferring, sent.Task, null) is null && TryClaim())
        {
            _ = DeferAsync(sent);
        }
    }

    private async Task DeferAsync(TaskCompletionSource<bool> sent)
    {
        var type = _plan.UpdatesInPlace ? ResponseType.DeferredUpdate : ResponseType.DeferredMessage;
        var flags = _plan is { UpdatesInPlace: false, IsPrivate: true } ? new DeferredFlags(MessageFlags.Ephemeral) : null;
        try
        {
            sent.SetResult(await SendAsync("defer", _api.AnswerAsync(
                _received.Interaction.Id, _received.Interaction.Token, new DeferredResponse(type, flags),
                WireJson.Default.DeferredResponse, [], FirstAnswerWithin - Age, _stopping)));
        }
        catch (OperationCanceledException)
        {
            // Whoever waits to follow the deferral up must not wait for ever.
            sent.SetCanceled(_stopping);
        }
    }

    private async Task FollowAsync(Card card)
    {
        if (Age > TokenLives || _received.ApplicationId is not { } application)
        {
            _log.LogWarning("{Interaction}: finished after {Seconds:0} s, too late to be shown",
                _received.Interaction, Age.TotalSeconds);
            return;
        }

        var token = _received.Interaction.Token;
        var fitsOriginal = _plan.UpdatesInPlace
            ? card is { IsPrivate: true, IsProblem: false }
            : card.IsPrivate == _plan.IsPrivate;
        if (fitsOriginal)
        {
            await SendAsync("edit", _api.EditOriginalAsync(application, token, card.Body, card.Files, _stopping));
            return;
        }

        await SendAsync("follow up", _api.FollowUpAsync(application, token, card.AsMessage, card.Files, _stopping));
        if (!_plan.UpdatesInPlace)
        {
            var note = CardWriter.Plain(card.IsPrivate ? "Answered to the asker alone." : "Posted for the crew.");
            await SendAsync("edit", _api.EditOriginalAsync(application, token, note.Body, [], _stopping));
        }
    }

    /// <summary>Waits for what is being sent, and logs what the platform no longer takes: a late token is nobody's fault to throw about.</summary>
    private async Task<bool> SendAsync(string what, Task sending)
    {
        try
        {
            await sending;
            return true;
        }
        catch (DiscordApiException refused)
        {
            _log.LogWarning("{Interaction}: could not {What} after {Age:0.00} s: {Reason}",
                _received.Interaction, what, Age.TotalSeconds, refused.Message);
            return false;
        }
    }
}
