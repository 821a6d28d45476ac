using CrewBot.Chat.Commands;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Rendering;
using Microsoft.Extensions.Hosting;

namespace CrewBot.Worker.Rooms;

/// <summary>The room in this terminal: takes line after line and answers each, until there are no more.</summary>
internal sealed class TerminalRoom(
    ILineSource lines, Conversation conversation, FileFolder folder, ReplyRenderer renderer, InlinePictures inline, Surroundings surroundings,
    IHostApplicationLifetime lifetime)
    : BackgroundService
{
    private const string Comment = "#";

    private static readonly Reply Greeting = new()
    {
        Headline = "CrewBot. Say what you fish for: walleye 24ft negative",
        Lines = ["Tab completes, help lists what can be asked, exit leaves."],
    };

    private bool _anyRefused;

    /// <summary>What the process shall tell: a script must learn that a line of it was refused.</summary>
    public int ExitCode { get; private set; } = Configuration.ExitCode.Failed;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            // Waiting for a key can't be interrupted; leaving the room does not wait for it.
            await Task.Run(() => AnswerAllAsync(stoppingToken), stoppingToken).WaitAsync(stoppingToken);
            ExitCode = _anyRefused ? Configuration.ExitCode.Refused : Configuration.ExitCode.Answered;
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            ExitCode = Configuration.ExitCode.Answered;
        }
        finally
        {
            lifetime.StopApplication();
        }
    }

    private async Task AnswerAllAsync(CancellationToken stoppingToken)
    {
        Greet();
        for (var number = 1; lines.Next() is { } line; number++)
        {
            if (string.IsNullOrWhiteSpace(line) || line.TrimStart().StartsWith(Comment, StringComparison.Ordinal))
            {
                continue;
            }

            if (await conversation.AnswerAsync(line, stoppingToken) is not { } reply || !TryShow(reply, number))
            {
                return;
            }
        }
    }

    private void Greet()
    {
        if (surroundings is { InputIsTerminal: true, OutputIsTerminal: true })
        {
            renderer.Write(Greeting, withActions: false);
        }
    }

    private bool TryShow(Reply reply, int lineNumber)
    {
        try
        {
            Show(folder.Save(reply), reply.Files.Where(file => file.IsPicture), lineNumber);
            return true;
        }
        catch (IOException)
        {
            // Whoever read the answers has gone.
            return false;
        }
    }

    private void Show(Reply reply, IEnumerable<ReplyFile> pictures, int lineNumber)
    {
        if (reply.Problem is not { } problem)
        {
            lines.WriteAbove(() =>
            {
                renderer.Write(reply, withActions: true);
                foreach (var picture in pictures)
                {
                    inline.Write(picture);
                }

                surroundings.Output.WriteLine();
            });
        }
        else if (surroundings.InputIsTerminal)
        {
            renderer.Refuse(reply);
        }
        else
        {
            _anyRefused = true;
            surroundings.Error.WriteLine(SafeText.Of($"line {lineNumber}: {problem}"));
        }

        surroundings.Output.Flush();
    }
}
