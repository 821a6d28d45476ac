using System.Collections;
using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
using SQLitePCL;

namespace CrewBot.Storage.Connections;

/// <summary>The row that a compiled statement stands on, as whatever maps rows reads one. It moves with the statement, not by itself.</summary>
/// <param name="statement">The statement.</param>
[SuppressMessage("Naming", "CA1710:Identifiers should have correct suffix", Justification = "It is one row, and that it can be listed is the base's.")]
internal sealed class StatementRow(sqlite3_stmt statement) : DbDataReader
{
    private readonly int _columns = raw.sqlite3_column_count(statement);

    public override int FieldCount => _columns;

    public override bool HasRows => true;

    public override bool IsClosed => false;

    public override int Depth => 0;

    public override int RecordsAffected => -1;

    public override object this[int ordinal] => GetValue(ordinal);

    public override object this[string name] => GetValue(GetOrdinal(name));

    /// <summary>
    /// Whether the types of the columns are the same in every row: those of a table's columns are fixed, that of an expression shows
    /// in its value alone.
    /// </summary>
    public bool HasKnownTypes => Enumerable.Range(0, _columns).All(column => DeclaredType(column) is not null || !IsDBNull(column));

    public override bool IsDBNull(int ordinal) => raw.sqlite3_column_type(statement, ordinal) == raw.SQLITE_NULL;

    public override long GetInt64(int ordinal) => raw.sqlite3_column_int64(statement, ordinal);

    public override int GetInt32(int ordinal) => checked((int)GetInt64(ordinal));

    public override short GetInt16(int ordinal) => checked((short)GetInt64(ordinal));

    public override byte GetByte(int ordinal) => checked((byte)GetInt64(ordinal));

    public override bool GetBoolean(int ordinal) => GetInt64(ordinal) != 0;

    public override double GetDouble(int ordinal) => raw.sqlite3_column_double(statement, ordinal);

    public override float GetFloat(int ordinal) => (float)GetDouble(ordinal);

    public override string GetString(int ordinal) => raw.sqlite3_column_text(statement, ordinal).utf8_to_string();

    public override object GetValue(int ordinal) => raw.sqlite3_column_type(statement, ordinal) switch
    {
        raw.SQLITE_INTEGER => GetInt64(ordinal),
        raw.SQLITE_FLOAT => GetDouble(ordinal),
        raw.SQLITE_TEXT => GetString(ordinal),
        raw.SQLITE_NULL => DBNull.Value,
        var other => throw new NotSupportedException($"No column holds type {other}."),
    };

    public override int GetValues(object[] values)
    {
        var count = Math.Min(values.Length, _columns);
        for (var column = 0; column < count; column++)
        {
            values[column] = GetValue(column);
        }

        return count;
    }

    public override string GetName(int ordinal) => raw.sqlite3_column_name(statement, ordinal).utf8_to_string();

    public override int GetOrdinal(string name) => Enumerable.Range(0, _columns).First(column => GetName(column) == name);

    public override string GetDataTypeName(int ordinal) => DeclaredType(ordinal) ?? "";

    [return: DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields | DynamicallyAccessedMemberTypes.PublicProperties)]
    public override Type GetFieldType(int ordinal) => raw.sqlite3_column_type(statement, ordinal) switch
    {
        raw.SQLITE_INTEGER => typeof(long),
        raw.SQLITE_FLOAT => typeof(double),
        raw.SQLITE_NULL when DeclaredType(ordinal) is "INTEGER" => typeof(long),
        raw.SQLITE_NULL when DeclaredType(ordinal) is "REAL" => typeof(double),
        _ => typeof(string),
    };

    public override bool Read() => throw Unable();

    public override bool NextResult() => throw Unable();

    public override IEnumerator GetEnumerator() => throw Unable();

    public override long GetBytes(int ordinal, long dataOffset, byte[]? buffer, int bufferOffset, int length) => throw Unable();

    public override char GetChar(int ordinal) => throw Unable();

    public override long GetChars(int ordinal, long dataOffset, char[]? buffer, int bufferOffset, int length) => throw Unable();

    public override DateTime GetDateTime(int ordinal) => throw Unable();

    public override decimal GetDecimal(int ordinal) => throw Unable();

    public override Guid GetGuid(int ordinal) => throw Unable();

    private string? DeclaredType(int ordinal) => raw.sqlite3_column_decltype(statement, ordinal).utf8_to_string();

    private static NotSupportedException Unable() => new("A row holds whole numbers, numbers and text, and moves with its statement.");
}
