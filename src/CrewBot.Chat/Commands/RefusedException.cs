namespace CrewBot.Chat.Commands;

/// <summary>Takes a refusal out of a transaction, so that everything in it is undone.</summary>
internal sealed class RefusedException(Reply reply) : Exception(reply.Problem)
{
    public Reply Reply => reply;
}
