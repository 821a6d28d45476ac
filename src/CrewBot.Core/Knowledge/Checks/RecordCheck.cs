using System.Text.RegularExpressions;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What holds of every record: a well-formed key, a name, a source, and words that find it alone.</summary>
internal static partial class RecordCheck
{
    private const int NameLength = 40;
    private const int SourceLength = 400;

    public static IEnumerable<Misfit> Misfits<T>(T record, RecordSet<T> section)
        where T : TradeRecord
    {
        if (!KeyForm().IsMatch(record.Key))
        {
            yield return new("key", "Write a key in lower case, words joined by hyphens, such as \"yellow-perch\".");
        }

        var texts = FieldCheck.Text("name", record.Name, NameLength)
            .Concat(FieldCheck.Text("source", record.Source, SourceLength))
            .Concat(record.Aliases.SelectMany(alias => FieldCheck.Text("aliases", alias, NameLength)));
        foreach (var misfit in texts)
        {
            yield return misfit;
        }

        var clashes =
            from word in RecordSet<T>.WordsOf(record)
            from other in section.Claiming(word)
            where other.Key != record.Key
            select new Misfit("aliases", $"'{word}' already means {other.Key}: leave it to one of the two.", other.Key);
        foreach (var clash in clashes)
        {
            yield return clash;
        }
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex KeyForm();
}
