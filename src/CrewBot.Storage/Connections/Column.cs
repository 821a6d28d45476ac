using System.Data.Common;
using Dapper;

namespace CrewBot.Storage.Connections;

/// <summary>Reads rows of one column.</summary>
internal static class Column
{
    public static Func<DbDataReader, long> Long(DbDataReader reader) => reader.GetRowParser<long>();

    public static Func<DbDataReader, long?> LongOrNull(DbDataReader reader) => reader.GetRowParser<long?>();

    public static Func<DbDataReader, int> Int(DbDataReader reader) => reader.GetRowParser<int>();

    public static Func<DbDataReader, int?> IntOrNull(DbDataReader reader) => reader.GetRowParser<int?>();

    public static Func<DbDataReader, string> Text(DbDataReader reader) => reader.GetRowParser<string>();
}
