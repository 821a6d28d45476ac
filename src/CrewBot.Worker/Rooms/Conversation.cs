using System.Globalization;
using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms;

/// <summary>Answers what is typed in a room: commands, the room's own words, and the buttons of the last answer.</summary>
internal sealed class Conversation(CommandCatalog catalog, Dispatcher dispatcher, IPictureDrawer drawer, Caller caller, TimeProvider clock)
{
    private Reply _last = new();
    private Reply _offering = new();

    /// <summary>Whether the pictures of every answer are drawn, or only when somebody asks for them.</summary>
    public bool DrawsAll { get; set; }

    /// <summary>Answers one line.</summary>
    /// <param name="line">As typed; not blank.</param>
    /// <param name="cancellationToken">Stops the answering.</param>
    /// <returns>The answer, or null when the line asks to leave.</returns>
    public async Task<Reply?> AnswerAsync(string line, CancellationToken cancellationToken)
    {
        var said = line.Trim();
        return PressedBy(said) is { } action ? await PressAsync(action, cancellationToken) : RoomWords.Find(said) switch
        {
            RoomWord.Leave => null,
            RoomWord.Help => HelpReply.For(said, catalog),
            RoomWord.Why => Explanation.Of(_last),
            RoomWord.Share => Shared(),
            RoomWord.PicturesOn => await DrawAllAsync(cancellationToken),
            RoomWord.PicturesOff => DrawNone(),
            _ when NumberOf(said) is not null && Offers(_offering).Any() => Reply.Refuse($"The buttons under the last answer go from 1 to {Offers(_offering).Count()}."),
            _ => await AskAsync(said, id: null, at: null, cancellationToken),
        };
    }

    /// <summary>Answers one command.</summary>
    /// <param name="line">The command as typed.</param>
    /// <param name="id">The request's id; null for a new one.</param>
    /// <param name="at">The request's instant; null for now.</param>
    /// <param name="cancellationToken">Stops the answering.</param>
    public async Task<Reply> AskAsync(string line, string? id, DateTimeOffset? at, CancellationToken cancellationToken)
    {
        var typed = CommandText.Read(line, catalog);
        if (typed.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var reply = await AskAsync(typed.Value!, id, at, cancellationToken);
        return reply.Problem is not { } problem ? reply
            : typed.Value!.Path == catalog.Bare.Path && line.TrimStart()[0] != '/' ? reply with { Problem = $"{problem} {HelpReply.PointerFor(line, catalog)}" }
            : reply with { Problem = Signpost.Beside(problem, line, catalog) };
    }

    private async Task<Reply> AskAsync(TypedCommand command, string? id, DateTimeOffset? at, CancellationToken cancellationToken)
    {
        var call = new CommandCall(
            id ?? Guid.CreateVersion7().ToString("N"), at ?? clock.GetUtcNow(), caller, command.Path, command.Options)
        {
            Files = LocalFiles.Instance,
            Place = TerminalPosts.Room,
        };
        var reply = await dispatcher.AnswerAsync(call, cancellationToken);
        if (reply.Problem is null)
        {
            _last = reply;
        }

        // A refusal may offer what could be done instead; why, share and pictures stay with the last answer.
        if (reply.Problem is null || Offers(reply).Any())
        {
            _offering = reply;
        }

        return DrawsAll ? await drawer.IllustrateAsync(reply, cancellationToken) : reply;
    }

    /// <summary>Everything that can be pressed under an answer, in the order of its numbers: buttons, then the choices of lists.</summary>
    public static IEnumerable<ReplyAction> Offers(Reply reply) => reply.Actions.Concat(reply.Choices.SelectMany(list => list.Choices));

    private static int? NumberOf(string said) =>
        int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private ReplyAction? PressedBy(string said) =>
        NumberOf(said) is { } number
            ? Offers(_offering).ElementAtOrDefault(number - 1)
            : Offers(_offering).FirstOrDefault(action => action.Label.Equals(said, StringComparison.OrdinalIgnoreCase));

    private async Task<Reply> PressAsync(ReplyAction action, CancellationToken cancellationToken) => action.Kind switch
    {
        ActionKind.Run => await AskAsync(new TypedCommand(action.Path, action.Options), id: null, at: null, cancellationToken),
        ActionKind.Why => Explanation.Of(_last),
        ActionKind.Share => Shared(),
        ActionKind.Picture => await PictureAsync(cancellationToken),
        ActionKind.Form => FormOf(action),
        _ => throw new InvalidOperationException($"No button does {action.Kind}."),
    };

    private async Task<Reply> DrawAllAsync(CancellationToken cancellationToken)
    {
        DrawsAll = true;
        var now = new Reply { Headline = "Pictures are drawn with every answer that has one; pictures:off ends it." };
        return _last.Pictures.Count == 0 ? now : (await PictureAsync(cancellationToken)) with { Headline = now.Headline };
    }

    private Reply DrawNone()
    {
        DrawsAll = false;
        return new Reply { Headline = "Pictures are drawn when you press Picture." };
    }

    // The words stand above already.
    private Task<Reply> PictureAsync(CancellationToken cancellationToken) => drawer.IllustrateAsync(
        new Reply { Headline = _last.Headline, Pictures = _last.Pictures }, cancellationToken);

    // What a form would ask for is a line to type here.
    private static Reply FormOf(ReplyAction form)
    {
        var open = form.Fields.Except(form.Options.Keys).ToList();
        return new Reply
        {
            Headline = form.Command,
            Lines = [open.Count > 0 ? $"Edit that line and send it; it also takes {string.Join(", ", open)}." : "Edit that line and send it."],
        };
    }

    private Reply Shared() => _last.Headline.Length == 0
        ? Reply.Refuse("There is nothing to share yet: ask first.")
        : _last with { Headline = $"To {caller.Crew}, from {caller.Member}: {_last.Headline}", Actions = [], Files = [], Audience = Audience.Crew };
}
