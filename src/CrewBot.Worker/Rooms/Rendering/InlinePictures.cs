using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Rooms.Rendering;

/// <summary>Shows pictures between the lines, in terminals that say by their surroundings that they speak the Kitty graphics protocol.</summary>
/// <remarks>
/// Terminals are not asked: an answer that comes late would be read as typed. One that is not known shows nothing, and the
/// file is there all the same. A multiplexer in between is taken for one that passes nothing on.
/// </remarks>
internal sealed class InlinePictures(Surroundings surroundings)
{
    private const int MostColumns = 48;
    private const int Chunk = 4096; // the protocol's limit for one escape sequence

    private readonly bool _canShow = surroundings.OutputIsTerminal
        && Says("TMUX", surroundings) is null && Says("STY", surroundings) is null
        && (Says("KITTY_WINDOW_ID", surroundings) is not null || Says("TERM", surroundings) == "xterm-kitty");

    /// <summary>Shows a PNG file from the cursor on, or nothing.</summary>
    public void Write(ReplyFile picture)
    {
        if (!_canShow)
        {
            return;
        }

        var text = Convert.ToBase64String(picture.Content.Span);
        var columns = Math.Min(MostColumns, Math.Max(1, surroundings.Width() - 2));
        for (var start = 0; start < text.Length; start += Chunk)
        {
            var end = Math.Min(text.Length, start + Chunk);
            // f=100: a PNG; a=T: show it; q=2: no reply, which would be read as typed.
            var head = start == 0 ? string.Create(CultureInfo.InvariantCulture, $"f=100,a=T,q=2,c={columns},") : "";
            surroundings.Output.Write($"\u001b_G{head}m={(end < text.Length ? 1 : 0)};");
            surroundings.Output.Write(text.AsSpan(start, end - start));
            surroundings.Output.Write("\u001b\\");
        }

        surroundings.Output.WriteLine();
    }

    private static string? Says(string variable, Surroundings surroundings) =>
        surroundings.Environment.GetValueOrDefault(variable) is { Length: > 0 } value ? value : null;
}
