using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Writes a whole command into the 100 characters of a component's id, so that buttons outlive restarts. Options go by
/// their place in the command's declaration; a checksum of it tells ids apart that an older version wrote. A command too
/// long for that is remembered in memory, and its id says where.
/// </summary>
/// <remarks>
/// Shape: version, kind, checksum, path, then each option as its place in base 36 and its value, with <c>~</c> between. The
/// id carries no right and no secret: whoever presses is asked again for theirs.
/// </remarks>
internal sealed class PressCodec(CommandCatalog catalog, PressMemory memory)
{
    private const char Version = '1';
    private const char Separator = '~';
    private const string Remembered = "*";
    private const string Digits = "0123456789abcdefghijklmnopqrstuvwxyz";

    private readonly FrozenDictionary<string, string> _checksums =
        catalog.Commands.ToFrozenDictionary(info => info.Path, Checksum);

    /// <summary>Writes the id; null for a command that does not exist.</summary>
    public string? Write(Press press)
    {
        if (!catalog.TryFind(press.Path, out var handler))
        {
            return null;
        }

        var id = new StringBuilder()
            .Append(Version).Append((char)press.Kind).Append(_checksums[press.Path]).Append(Packed(press.Path));
        foreach (var (name, value) in press.Options)
        {
            var place = PlaceOf(name, handler.Info.Options);
            if (place < 0 || place >= Digits.Length)
            {
                return null;
            }

            id.Append(Separator).Append(Digits[place]).Append(Packed(value));
        }

        return id.Length <= Limits.CustomId ? id.ToString() : $"{Version}{(char)press.Kind}{Remembered}{memory.Keep(press)}";
    }

    /// <summary>Reads an id; null for one that nobody wrote, an older version wrote, or memory has lost.</summary>
    public Press? Read(string? id)
    {
        if (id is not { Length: > 3 } || id[0] != Version || !Enum.IsDefined((PressKind)id[1]))
        {
            return null;
        }

        var kind = (PressKind)id[1];
        if (id[2..].StartsWith(Remembered, StringComparison.Ordinal))
        {
            return memory.Find(id[3..]) is { } kept && kept.Kind == kind ? kept : null;
        }

        var parts = id[2..].Split(Separator);
        return parts[0].Length > 2 && catalog.TryFind(Unpacked(parts[0][2..]), out var handler)
            && _checksums[handler.Info.Path] == parts[0][..2]
            && TryReadOptions(handler.Info, parts.AsSpan(1), out var options)
                ? new Press(kind, handler.Info.Path, options)
                : null;
    }

    private static bool TryReadOptions(CommandInfo info, ReadOnlySpan<string> parts, out Dictionary<string, string> options)
    {
        options = [];
        foreach (var part in parts)
        {
            var place = part.Length > 0 ? Digits.IndexOf(part[0], StringComparison.Ordinal) : -1;
            if (place < 0 || place >= info.Options.Count)
            {
                return false;
            }

            options[info.Options[place].Name] = Unpacked(part[1..]);
        }

        return true;
    }

    private static int PlaceOf(string name, IReadOnlyList<CommandOption> options)
    {
        var place = options.Count - 1;
        while (place >= 0 && options[place].Name != name)
        {
            place--;
        }

        return place;
    }

    /// <summary>Two characters over the path and the options in their order (FNV-1a, folded).</summary>
    private static string Checksum(CommandInfo info)
    {
        var hash = 2166136261u;
        foreach (var character in $"{info.Path}:{string.Join(',', info.Options.Select(option => option.Name))}")
        {
            hash = (hash ^ character) * 16777619u;
        }

        hash ^= hash >> 16;
        return $"{Digits[(int)(hash % 36)]}{Digits[(int)(hash / 36 % 36)]}";
    }

    /// <summary>Keeps to printable ASCII: a blank becomes an underscore, what else is special goes as its UTF-8 bytes.</summary>
    private static string Packed(string text)
    {
        var packed = new StringBuilder(text.Length);
        foreach (var unit in Encoding.UTF8.GetBytes(text))
        {
            var character = (char)unit;
            packed = character switch
            {
                ' ' => packed.Append('_'),
                '_' or '%' or Separator or <= ' ' or >= '\u007f' =>
                    packed.Append(CultureInfo.InvariantCulture, $"%{unit:X2}"),
                _ => packed.Append(character),
            };
        }

        return packed.ToString();
    }

    private static string Unpacked(string packed) => Uri.UnescapeDataString(packed.Replace('_', ' '));
}
