using System.Text;
using CrewBot.Worker.Rooms.Editing;

namespace CrewBot.Worker.Tests.Rooms.Editing;

/// <summary>A terminal whose keys are known before.</summary>
internal sealed class ScriptedTerminal(IEnumerable<ConsoleKeyInfo> keys) : ITerminal
{
    private readonly Queue<ConsoleKeyInfo> _keys = new(keys);
    private readonly StringBuilder _written = new();

    public int Width { get; init; } = 60;

    public bool KeyWaits => false;

    public string Written => _written.ToString();

    public ConsoleKeyInfo ReadKey() => _keys.Dequeue();

    public void Write(string text) => _written.Append(text);

    /// <summary>Keys as a script: plain text, and names in angle brackets such as <c>&lt;Tab&gt;</c> or <c>&lt;C-W&gt;</c>.</summary>
    public static IEnumerable<ConsoleKeyInfo> Keys(string script)
    {
        for (var at = 0; at < script.Length; at++)
        {
            if (script[at] == '<')
            {
                var end = script.IndexOf('>', at);
                yield return Named(script[(at + 1)..end]);
                at = end;
            }
            else
            {
                yield return new ConsoleKeyInfo(script[at], ConsoleKey.None, shift: false, alt: false, control: false);
            }
        }
    }

    private static ConsoleKeyInfo Named(string name)
    {
        var control = name.StartsWith("C-", StringComparison.Ordinal);
        var alt = name.StartsWith("A-", StringComparison.Ordinal);
        var key = Enum.Parse<ConsoleKey>(control || alt ? name[2..] : name);
        return new ConsoleKeyInfo('\0', key, shift: false, alt, control);
    }
}
