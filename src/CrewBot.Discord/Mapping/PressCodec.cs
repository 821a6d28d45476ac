using System.Buffers;
using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Writes a whole command into the 100 characters of a component's id, so that buttons outlive restarts. Options go by
/// their place in the command's declaration; a checksum of it tells ids apart that an older version wrote. A command too
/// long for that is kept elsewhere, written the same way, and its id says where.
/// </summary>
/// <remarks>
/// Shape: version, kind, checksum, path, then each option as its place in base 36 and its value, with <c>~</c> between; in a
/// form last a dot and the places of its fields. The id carries no right and no secret: whoever presses is asked again for
/// theirs.
/// </remarks>
internal sealed class PressCodec(CommandCatalog catalog, LongButtons buttons)
{
    private const char Version = '1';
    private const char Separator = '~';
    private const char Asked = '.';
    private const char Kept = '*';
    private const string Digits = "0123456789abcdefghijklmnopqrstuvwxyz";

    private const string Plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-+.,/:";

    private static readonly SearchValues<char> PlainOrBlank = SearchValues.Create(Plain + ' ');

    // By the command's path.
    private readonly FrozenDictionary<string, Shape> _shapes = catalog.Commands.ToFrozenDictionary(info => info.Path, Shape.Of);

    /// <summary>Writes the id; null for a command that does not exist.</summary>
    public string? Write(Press press)
    {
        if (!_shapes.TryGetValue(press.Path, out var shape))
        {
            return null;
        }

        var id = new StringBuilder(Limits.CustomId).Append(Version).Append((char)press.Kind).Append(shape.Beginning);
        foreach (var (name, value) in press.Options)
        {
            if (!shape.Places.TryGetValue(name, out var place))
            {
                return null;
            }

            id.Append(Separator).Append(place).Append(Packed(value));
        }

        if (press.Fields.Count > 0)
        {
            id.Append(Separator).Append(Asked);
            foreach (var field in press.Fields)
            {
                if (!shape.Places.TryGetValue(field, out var place))
                {
                    return null;
                }

                id.Append(place);
            }
        }

        return id.Length <= Limits.CustomId ? id.ToString() : $"{Version}{(char)press.Kind}{Kept}{buttons.Keep(id.ToString())}";
    }

    /// <summary>Has what components stand for outlive this process, as far as their ids do not say it themselves.</summary>
    /// <param name="crew">Whose components they are; those of no crew live as long as this process.</param>
    /// <param name="ids">The ids of components and of what can be chosen.</param>
    /// <param name="cancellationToken">Gives up before anything is stored.</param>
    public Task SaveAsync(string? crew, IEnumerable<string> ids, CancellationToken cancellationToken)
    {
        List<string> keys = crew is null ? [] : [.. ids.Where(IsKept).Select(id => id[3..])];
        return keys.Count == 0 ? Task.CompletedTask : buttons.SaveAsync(crew!, keys, cancellationToken);
    }

    /// <summary>Reads an id; null for one that nobody wrote, an older version wrote, or whose command is kept no more.</summary>
    /// <param name="id">The id.</param>
    /// <param name="crew">Where it was pressed.</param>
    /// <param name="cancellationToken">Stops looking.</param>
    public async ValueTask<Press?> ReadAsync(string? id, string? crew, CancellationToken cancellationToken) => id is not null && IsKept(id)
        ? Read(await buttons.FindAsync(crew, id[3..], cancellationToken)) is { } kept && (char)kept.Kind == id[1] ? kept : null
        : Read(id);

    private static bool IsKept(string id) => id.Length > 3 && id[0] == Version && id[2] == Kept;

    private Press? Read(string? id)
    {
        if (id is not { Length: > 3 } || id[0] != Version || !Enum.IsDefined((PressKind)id[1]))
        {
            return null;
        }

        var kind = (PressKind)id[1];
        var parts = id[2..].Split(Separator);
        return parts[0].Length > 2 && catalog.TryFind(Unpacked(parts[0][2..]), out var handler)
            && _shapes[handler.Info.Path].Beginning == parts[0]
                ? ReadOptions(kind, handler.Info, parts.AsSpan(1))
                : null;
    }

    private static Press? ReadOptions(PressKind kind, CommandInfo info, ReadOnlySpan<string> parts)
    {
        var options = new Dictionary<string, string>();
        var fields = new List<string>();
        foreach (var part in parts)
        {
            if (part is [Asked, .. var places])
            {
                if (places.Any(place => OptionAt(place, info) is null))
                {
                    return null;
                }

                fields.AddRange(places.Select(place => OptionAt(place, info)!.Name));
            }
            else if (part.Length > 0 && OptionAt(part[0], info) is { } option)
            {
                options[option.Name] = Unpacked(part[1..]);
            }
            else
            {
                return null;
            }
        }

        return new Press(kind, info.Path, options) { Fields = fields };
    }

    private static CommandOption? OptionAt(char digit, CommandInfo info) =>
        info.Options.ElementAtOrDefault(Digits.IndexOf(digit, StringComparison.Ordinal));

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
        if (!text.AsSpan().ContainsAnyExcept(PlainOrBlank))
        {
            return text.Replace(' ', '_');
        }

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

    /// <summary>How ids of one command are written.</summary>
    /// <param name="Beginning">The checksum and the path.</param>
    /// <param name="Places">What stands for each of the options that an id can hold.</param>
    private sealed record Shape(string Beginning, FrozenDictionary<string, char> Places)
    {
        public static Shape Of(CommandInfo info) => new(
            Checksum(info) + Packed(info.Path),
            info.Options.Take(Digits.Length).Select((option, place) => (option.Name, Place: Digits[place]))
                .ToFrozenDictionary(option => option.Name, option => option.Place));
    }
}
