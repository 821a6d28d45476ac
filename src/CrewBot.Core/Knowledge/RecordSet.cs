using System.Collections;
using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace CrewBot.Core.Knowledge;

/// <summary>All records of one kind, in the order of the files, found by key, name or alias.</summary>
/// <typeparam name="T">The kind of record.</typeparam>
public sealed class RecordSet<T> : IReadOnlyList<T>
    where T : TradeRecord
{
    private readonly T[] records;
    private readonly FrozenDictionary<string, T> byKey;
    private readonly ILookup<string, T> byClaimedWord;
    private readonly FrozenDictionary<string, T> byWord;

    internal RecordSet(IEnumerable<T> records)
    {
        this.records = [.. records];
        byKey = this.records.ToFrozenDictionary(record => record.Key);
        byClaimedWord = this.records
            .SelectMany(record => WordsOf(record).Select(word => (word, record)))
            .ToLookup(pair => pair.word, pair => pair.record);
        byWord = byClaimedWord.ToFrozenDictionary(claim => claim.Key, claim => claim.First());
    }

    public int Count => records.Length;

    public T this[int index] => records[index];

    /// <summary>The record with this key.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public T this[string key] => byKey[key];

    /// <summary>Is there a record with this key?</summary>
    public bool Has(string key) => byKey.ContainsKey(key);

    /// <summary>Finds a record by what a person might call it: case, hyphens and a plural s do not matter.</summary>
    public bool TryFind(string word, [MaybeNullWhen(false)] out T record)
    {
        var plain = Plain(word);
        return byWord.TryGetValue(plain, out record)
            || (plain.EndsWith('s') && byWord.TryGetValue(plain[..^1], out record))
            || (plain.EndsWith("es", StringComparison.Ordinal) && byWord.TryGetValue(plain[..^2], out record));
    }

    /// <summary>Every word that finds a record, with the record.</summary>
    public IEnumerable<KeyValuePair<string, T>> Words => byWord;

    public IEnumerator<T> GetEnumerator() => records.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>How a word is compared: lower case, one space between parts, no hyphen or apostrophe.</summary>
    internal static string Plain(string word) =>
        string.Join(' ', word.ToLowerInvariant().Replace("'", "", StringComparison.Ordinal)
            .Split([' ', '-', '_', '\t'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Every record that answers to a plain word: more than one is a fault.</summary>
    internal IEnumerable<T> Claiming(string word) => byClaimedWord[word];

    internal static IEnumerable<string> WordsOf(T record) =>
        record.Aliases.Append(record.Name).Append(record.Key).Select(Plain).Distinct();
}
