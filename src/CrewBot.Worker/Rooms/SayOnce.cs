using CrewBot.Chat.Commands;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Rooms;

/// <summary>Answers one command, for scripts and for whoever just wants to know.</summary>
internal sealed class SayOnce(Conversation conversation, FileFolder folder, Surroundings surroundings)
{
    /// <summary>Answers the command.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(SayArguments say, CancellationToken cancellationToken)
    {
        var command = say.Command == "-" ? BoundedText.ReadToEnd(surroundings.Input) : say.Command;
        var reply = RoomWords.Find(command) == RoomWord.Help
            ? await conversation.AnswerAsync(command, cancellationToken)
            : await conversation.AskAsync(command, say.Id, say.At, cancellationToken);
        try
        {
            // An object holds its files itself, unless somebody said where its pictures shall go.
            reply = say.Json && !conversation.DrawsAll ? reply : folder.Save(reply!);
            Print(reply!, say.Json);
        }
        catch (IOException)
        {
            // Whoever read the answer has gone; the exit code still tells.
        }

        return reply!.Problem is null ? ExitCode.Answered : ExitCode.Refused;
    }

    private void Print(Reply reply, bool asJson)
    {
        if (asJson)
        {
            surroundings.Output.WriteLine(SafeText.OfJson(ReplyJson.Write(reply)));
        }
        else if (reply.Problem is null)
        {
            new ReplyRenderer(ConsoleOutput.Open(surroundings)).Write(reply, withActions: false);
        }

        surroundings.Output.Flush();
        if (reply.Problem is { } problem)
        {
            surroundings.Error.WriteLine(SafeText.Of(problem));
        }
    }
}
