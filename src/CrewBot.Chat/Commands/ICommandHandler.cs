namespace CrewBot.Chat.Commands;

/// <summary>Answers one command.</summary>
public interface ICommandHandler
{
    CommandInfo Info { get; }

    Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken);
}
