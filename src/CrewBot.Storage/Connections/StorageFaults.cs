using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CrewBot.Storage.Connections;

/// <summary>Says in one line what a fault of file or disk means to whoever runs the program.</summary>
internal static class StorageFaults
{
    /// <summary>Whether the fault lies with file, disk or another program, and not with a statement.</summary>
    public static bool IsOutside(SqliteException fault) => LineOf(fault, "") is not null;

    /// <summary>The fault as a line.</summary>
    public static StorageException Of(SqliteException fault, string path) =>
        new(LineOf(fault, path) ?? $"{path}: {fault.Message}", fault);

    private static string? LineOf(SqliteException fault, string path) => fault.SqliteErrorCode switch
    {
        _ when IsFull(fault) => $"The disk that holds {path} is full. Nothing was stored: make room, then send it again.",
        raw.SQLITE_CORRUPT or raw.SQLITE_NOTADB =>
            $"{path} is damaged or not a database of CrewBot. It was left as it is: put it aside and bring back a backup with: restore FILE.",
        raw.SQLITE_BUSY or raw.SQLITE_LOCKED => $"{path} is held by another program. Nothing was stored: try again, or end the other one.",
        raw.SQLITE_READONLY or raw.SQLITE_PERM =>
            $"{path} can't be written. Nothing was stored: give this user write access to the file and its folder.",
        raw.SQLITE_CANTOPEN => $"{path} can't be opened: check that its folder exists and that this user may read and write it.",
        raw.SQLITE_IOERR => $"The disk that holds {path} reports an error. Nothing was stored: check the disk before going on.",
        _ => null,
    };

    // Opening makes a small file beside the database, and a full disk has no room for that one either.
    private static bool IsFull(SqliteException fault) =>
        fault.SqliteErrorCode == raw.SQLITE_FULL || fault.SqliteExtendedErrorCode == raw.SQLITE_IOERR_SHMSIZE;
}
