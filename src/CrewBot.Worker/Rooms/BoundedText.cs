using System.Text;

namespace CrewBot.Worker.Rooms;

/// <summary>Reads text of which there may be any amount, and keeps no more than could be of use.</summary>
internal static class BoundedText
{
    // Far beyond the longest command, so that a text that is too long is still refused for what it is.
    private const int Kept = 100_000;

    /// <summary>The rest of the text.</summary>
    public static string ReadToEnd(TextReader reader)
    {
        var kept = new char[Kept];
        return new string(kept, 0, reader.ReadBlock(kept, 0, Kept));
    }

    /// <summary>One line without its ending, whatever follows the first 100,000 characters dropped; null at the end.</summary>
    public static string? ReadLine(TextReader reader)
    {
        var next = reader.Read();
        if (next < 0)
        {
            return null;
        }

        var line = new StringBuilder();
        for (; next >= 0 && next != '\n'; next = reader.Read())
        {
            if (line.Length < Kept)
            {
                line.Append((char)next);
            }
        }

        return line.ToString().TrimEnd('\r');
    }
}
