using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;
using CsvHelper;
using CsvHelper.Configuration;

namespace CrewBot.Chat.Tables;

/// <summary>Opens a file of comma-separated values (RFC 4180) as people's worksheets save it, in UTF-8.</summary>
internal static class CsvText
{
    /// <summary>With the mark without which worksheets take a file for another encoding.</summary>
    public static Encoding Utf8 { get; } = new UTF8Encoding(encoderShouldEmitUTF8Identifier: true, throwOnInvalidBytes: true);

    /// <summary>A parser at the start of the file, or in a line why it is no text.</summary>
    public static Reading<CsvParser> Open(ReadOnlyMemory<byte> content)
    {
        string text;
        try
        {
            text = Utf8.GetString(content.Span).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return new Misread("The file is not in UTF-8: save it as \"CSV UTF-8\".");
        }

        // A worksheet of a country with decimal commas is saved with semicolons.
        var first = text.AsSpan(0, Math.Max(0, text.IndexOfAny(['\r', '\n'])));
        return new CsvParser(new StringReader(text), new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = first.Contains(';') && !first.Contains(',') ? ";" : ",",
            BadDataFound = null,
        });
    }
}
