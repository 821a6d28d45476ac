using System.Text;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>Lets a person write, mend, recall and complete a line in a terminal.</summary>
internal sealed class LineEditor(ITerminal terminal, Completer completer, History history, HistoryFile? file) : ILineSource
{
    private const string ToRowStart = "\r";
    private const string ClearToEnd = "\u001b[K";
    private const string ClearScreen = "\u001b[H\u001b[2J";
    private const int NarrowestRow = 4;

    private readonly Lock _turn = new();

    private EditLine _line;
    private bool _asks;

    // Where in the history the line comes from, and what was written before looking there.
    private int _recalled;
    private string _before = "";

    public string? Next()
    {
        lock (_turn)
        {
            _line = EditLine.Empty;
            _asks = true;
            StopRecalling();
        }

        while (true)
        {
            // Between the keys of a paste, or the two halves of a character, there is nothing worth showing.
            if (!terminal.KeyWaits)
            {
                InTurn(Show);
            }

            var key = terminal.ReadKey();
            lock (_turn)
            {
                switch (Press(key))
                {
                    case Pressed.Done:
                        _asks = false;
                        return Finish();
                    case Pressed.Leave:
                        _asks = false;
                        terminal.Write("\n");
                        return null;
                }
            }
        }
    }

    public void WriteAbove(Action write) => InTurn(() =>
    {
        if (_asks)
        {
            terminal.Write(ToRowStart + ClearToEnd);
        }

        write();
        if (_asks)
        {
            Show();
        }
    });

    private enum Pressed
    {
        Goes,
        Done,
        Leave,
    }

    private void InTurn(Action act)
    {
        lock (_turn)
        {
            act();
        }
    }

    private Pressed Press(ConsoleKeyInfo key)
    {
        var control = key.Modifiers.HasFlag(ConsoleModifiers.Control);
        switch (key.Key)
        {
            case ConsoleKey.Enter:
            case ConsoleKey.J or ConsoleKey.M when control:
                return Pressed.Done;
            case ConsoleKey.D when control && _line.Text.Length == 0:
                return Pressed.Leave;
            case ConsoleKey.C when control:
                Abandon();
                break;
            case ConsoleKey.L when control:
                terminal.Write(ClearScreen);
                break;
            case ConsoleKey.Tab:
                Complete();
                break;
            case ConsoleKey.UpArrow:
            case ConsoleKey.P when control:
                Recall(history.FindBefore(_before, _recalled));
                break;
            case ConsoleKey.DownArrow:
            case ConsoleKey.N when control:
                RecallForward();
                break;
            default:
                Edit(key);
                break;
        }

        return Pressed.Goes;
    }

    private void Edit(ConsoleKeyInfo key)
    {
        if (EditKeys.For(key) is { } edit)
        {
            _line = edit(_line);
            StopRecalling();
        }
    }

    private void Abandon()
    {
        _line = EditLine.Empty;
        StopRecalling();
    }

    private void StopRecalling()
    {
        _recalled = history.Lines.Count;
        _before = _line.Text;
    }

    private void Recall(int found)
    {
        if (found >= 0)
        {
            _recalled = found;
            _line = EditLine.Of(history.Lines[found]);
        }
    }

    private void RecallForward()
    {
        var found = history.FindAfter(_before, _recalled);
        if (found >= 0)
        {
            Recall(found);
        }
        else
        {
            _line = EditLine.Of(_before);
            _recalled = history.Lines.Count;
        }
    }

    private void Complete()
    {
        var completion = completer.Complete(_line.BeforeCursor);
        var common = CommonStart(completion.Candidates);
        var begun = _line.BeforeCursor[completion.Start..];
        if (common.Length > begun.Length || completion.Candidates.Count == 1)
        {
            _line = new EditLine(_line.Text.Remove(completion.Start, begun.Length), completion.Start).Insert(common);
            StopRecalling();
        }
        else if (completion.Candidates.Count > 1)
        {
            List(completion.Candidates);
        }
    }

    private void List(IReadOnlyList<string> candidates)
    {
        var list = new StringBuilder("\n");
        foreach (var row in CandidateRows.Of([.. candidates.Select(candidate => SafeText.Of(candidate.Trim()))], terminal.Width))
        {
            list.Append(row).Append('\n');
        }

        terminal.Write(list.ToString());
    }

    private string Finish()
    {
        // The whole line stays in view above its answer, however long it is.
        terminal.Write(ToRowStart + ILineSource.Prompt + SafeText.Of(_line.Text) + ClearToEnd + "\n");
        history.Add(_line.Text.Trim());
        file?.Write(history.Lines);
        return _line.Text;
    }

    private void Show()
    {
        var prompt = ILineSource.Prompt;
        var view = Viewport.Of(_line, Math.Max(NarrowestRow, terminal.Width - prompt.Length));
        var column = prompt.Length + view.CursorColumn;
        terminal.Write($"{ToRowStart}{prompt}{view.Text}{ClearToEnd}{ToRowStart}\u001b[{column}C");
    }

    private static string CommonStart(IReadOnlyList<string> candidates)
    {
        if (candidates.Count == 0)
        {
            return "";
        }

        var length = candidates.Min(candidate => candidate.Length);
        while (candidates.Any(candidate => !candidate.AsSpan(0, length).Equals(candidates[0].AsSpan(0, length), StringComparison.OrdinalIgnoreCase)))
        {
            length--;
        }

        return candidates[0][..length];
    }
}
