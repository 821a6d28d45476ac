namespace CrewBot.Storage.People;

/// <summary>A table that names people: what it holds on one, and what becomes of that when they are erased.</summary>
/// <param name="Name">The table.</param>
/// <param name="What">What its rows are, for the person: "catches".</param>
/// <param name="EraseSql">Takes away what may not stay; takes the crew and the person.</param>
internal sealed record HeldTable(string Name, string What, string EraseSql)
{
    /// <summary>For what stays as it is, because a name stands only in the table of people.</summary>
    public const string StaysSql = "";

    /// <summary>The column that names the person.</summary>
    public string Column { get; init; } = "member_id";

    /// <summary>Reads the rows. Without a word everything that is held: a column that is added later is shown without being remembered here.</summary>
    public string RowsSql
    {
        get => field ?? $"SELECT * FROM {Name} WHERE crew_id = @CrewId AND {Column} = @MemberId";
        init;
    }
}
