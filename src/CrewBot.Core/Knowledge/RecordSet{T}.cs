using System.Collections;
using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace CrewBot.Core.Knowledge;

/// <summary>All records of one kind, in the order of the files, found by key, name or alias.</summary>
/// <typeparam name="T">The kind of record.</typeparam>
public sealed class RecordSet<T> : IReadOnlyList<T>
    where T : TradeRecord
{
    private readonly T[] _records;
    private readonly FrozenDictionary<string, T> _byKey;
    private readonly ILookup<string, T> _byClaimedWord;
    private readonly FrozenDictionary<string, T> _byWord;

    internal RecordSet(IEnumerable<T> records)
    {
        _records = [.. records];
        _byKey = _records.ToFrozenDictionary(record => record.Key);
        _byClaimedWord = _records
            .SelectMany(record => WordsOf(record).Select(word => (word, record)))
            .ToLookup(pair => pair.word, pair => pair.record);
        _byWord = _byClaimedWord.ToFrozenDictionary(claim => claim.Key, claim => claim.First());
    }

    public int Count => _records.Length;

    public T this[int index] => _records[index];

    /// <summary>The record with this key.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public T this[string key] => _byKey[key];

    /// <summary>Is there a record with this key?</summary>
    public bool Has(string key) => _byKey.ContainsKey(key);

    /// <summary>The first record that is as asked; null when none is.</summary>
    internal T? Find(Predicate<T> isAsked) => Array.Find(_records, isAsked);

    /// <summary>Finds a record by what a person might call it: case, hyphens and a plural s do not matter.</summary>
    public bool TryFind(string word, [MaybeNullWhen(false)] out T record)
    {
        var plain = RecordSet.Plain(word);
        return _byWord.TryGetValue(plain, out record)
            || (plain.EndsWith('s') && _byWord.TryGetValue(plain[..^1], out record))
            || (plain.EndsWith("es", StringComparison.Ordinal) && _byWord.TryGetValue(plain[..^2], out record));
    }

    /// <summary>Every word that finds a record, with the record.</summary>
    public IEnumerable<KeyValuePair<string, T>> Words => _byWord;

    public IEnumerator<T> GetEnumerator() => _records.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Every record that answers to a plain word: more than one is a fault.</summary>
    internal IEnumerable<T> Claiming(string word) => _byClaimedWord[word];

    internal static IEnumerable<string> WordsOf(T record) =>
        record.Aliases.Append(record.Name).Append(record.Key).Select(RecordSet.Plain).Distinct();
}
