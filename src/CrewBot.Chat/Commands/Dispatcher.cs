using CrewBot.Storage;
using Microsoft.Extensions.Logging;

namespace CrewBot.Chat.Commands;

/// <summary>Takes a call to its handler: checks who asks, reads the options, answers faults in a line.</summary>
public sealed class Dispatcher(CommandCatalog catalog, CrewBook book, ILogger<Dispatcher> logger)
{
    /// <summary>Answers one call.</summary>
    /// <returns>The handler's reply, or a refusal; throws only when cancelled.</returns>
    public async Task<Reply> AnswerAsync(CommandCall call, CancellationToken cancellationToken)
    {
        if (!catalog.TryFind(call.Path, out var handler))
        {
            return Reply.Refuse($"There is no command {Quoting.Quote('/' + call.Path)}.");
        }

        try
        {
            var (caller, first) = handler.Info.Writes
                ? await book.WithFirstAnswerAsync(call, cancellationToken)
                : (await book.WithSettingsAsync(call.Caller, cancellationToken), null);
            var reply = await AnswerAsync(call with { Caller = caller }, first, handler, cancellationToken);
            return caller.HasOtherCrews && !handler.Info.NeedsNoCrew && reply.Problem is null
                ? reply with { Lines = [.. reply.Lines, $"For {caller.CrewName ?? "the crew you wrote in last"}: you belong to others too."] }
                : reply;
        }
        catch (StorageException refused)
        {
            return Reply.Refuse(refused.Message);
        }
    }

    /// <summary>
    /// What a call says as far as it is understood, its shorthand read, when it lacks something that the command needs; null
    /// when it can be answered as it is.
    /// </summary>
    public async Task<IReadOnlyDictionary<string, string>?> FindShortfallAsync(CommandCall call, CancellationToken cancellationToken)
    {
        if (!catalog.TryFind(call.Path, out var handler))
        {
            return null;
        }

        var caller = await book.WithSettingsAsync(call.Caller, cancellationToken);
        return RequestReading.FindShortfall(call with { Caller = caller }, handler.Info);
    }

    /// <summary>What this caller could mean by an option that is still being written, best first.</summary>
    public async Task<IEnumerable<string>> SuggestAsync(
        Caller caller, string path, string optionName, string begun, CancellationToken cancellationToken) =>
        catalog.TryFind(path, out var handler)
        && handler.Info.Options.FirstOrDefault(option => option.Name == optionName) is { } option
            ? option.Suggest(begun, await book.WithSuggestionsAsync(caller, cancellationToken))
            : [];

    private async Task<Reply> AnswerAsync(CommandCall call, Reply? first, ICommandHandler handler, CancellationToken cancellationToken)
    {
        var info = handler.Info;
        if (call.Caller.Role < info.Role)
        {
            return Reply.Refuse($"/{info.Path} is for a crew's {info.Role.ToString().ToLowerInvariant()}.");
        }

        if (!info.NeedsNoCrew && (call.Caller.Crew is null || (call.IsDirect && !info.FromAnywhere)))
        {
            return Reply.Refuse(info.FromAnywhere
                ? $"/{info.Path} needs a crew: log something in your crew's own chat once, then it works in a direct message too."
                : $"/{info.Path} works inside a crew's own chat, not in a direct message.");
        }

        if (first is not null)
        {
            return first;
        }

        var request = RequestReading.Read(call, info);
        if (request.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        try
        {
            return await handler.HandleAsync(request.Value!, cancellationToken);
        }
        catch (StorageException)
        {
            throw;
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // The one place that must outlive whatever a handler throws.
        catch (Exception unexpected)
#pragma warning restore CA1031
        {
            logger.LogError(unexpected, "Request {Id}: /{Path} failed.", call.Id, call.Path);
            return Reply.Refuse($"Something went wrong inside CrewBot; it is in the log as request {call.Id}.");
        }
    }
}
