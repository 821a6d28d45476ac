using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Tables;
using CrewBot.Core.Ice;
using CrewBot.Core.Weather;
using CsvHelper;

namespace CrewBot.Chat.Ice;

/// <summary>Reads a file of daily maxima and minima: a weather station's, as people download it. A day that is missing is refused.</summary>
internal sealed class DayFile
{
    private const string Accepts = "columns date, max and min, such as max_f and min_f";

    private static readonly string[] MostWords = ["max", "high", "warm"];
    private static readonly string[] LeastWords = ["min", "low", "cold"];
    private static readonly string[] DateWords = ["date", "day"];

    private readonly int _most;
    private readonly int _least;
    private readonly int _date;
    private readonly string _unit;
    private readonly CrewUnits _units;
    private readonly List<(DateOnly? Date, DayTemperatures Day)> _days = [];

    private DayFile(string[] names, CrewUnits units)
    {
        (_most, _least, _date, _units) = (Find(names, MostWords), Find(names, LeastWords), Find(names, DateWords), units);
        _unit = _most < 0 ? "" : UnitOf(names[_most]);
    }

    /// <summary>Reads it.</summary>
    /// <param name="content">The file.</param>
    /// <param name="units">What a number without a unit is in.</param>
    /// <param name="today">The day of the question: a later one is a forecast.</param>
    public static Reading<DayList> Read(ReadOnlyMemory<byte> content, CrewUnits units, DateOnly today)
    {
        var opened = CsvText.Open(content);
        if (opened.Fault is { } fault)
        {
            return new Misread(fault);
        }

        using var parser = opened.Value!;
        if (!parser.Read())
        {
            return new Misread($"The file is empty. It needs {Accepts}.");
        }

        var file = new DayFile([.. parser.Record!.Select(name => name.Trim().ToLowerInvariant())], units);
        return (file._most < 0 || file._least < 0 ? $"The first row names no maximum or no minimum. It needs {Accepts}." : file.ReadRows(parser, today)) is { } wrong
            ? new Misread(wrong)
            : new DayList([.. file._days.OrderBy(day => day.Date).Select(day => day.Day)], file._unit.Length == 0);
    }

    private string? ReadRows(CsvParser parser, DateOnly today)
    {
        while (parser.Read())
        {
            if (parser.Record!.All(string.IsNullOrWhiteSpace))
            {
                continue;
            }

            if (RowFault(parser.Record!) is { } fault)
            {
                return $"line {parser.RawRow}: {fault}";
            }
        }

        return _days.Count is 0 or > GrowingWeather.MostDays ? $"The file has {_days.Count} days: give 1 to {GrowingWeather.MostDays}."
            : _date < 0 ? null
            : _days.Max(day => day.Date) > today ? "A day to come is a forecast, and a forecast makes no ice: leave it out."
            : GapIn([.. _days.Select(day => day.Date!.Value).Order()]);
    }

    private string? RowFault(string[] cells)
    {
        DateOnly? date = null;
        if (_date >= 0)
        {
            if (!DateOnly.TryParseExact(Cell(cells, _date), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var read))
            {
                return $"{Quoting.Quote(Cell(cells, _date))} is no date. Give it as 2027-01-16.";
            }

            date = read;
        }

        var (most, least) = (Cell(cells, _most), Cell(cells, _least));
        if (most.Length == 0 || least.Length == 0)
        {
            return "max or min is missing. A day that nobody knows may have thawed: fill it in, or start after it.";
        }

        var day = DayListReader.Day(most, least, _unit, _units);
        if (day.Fault is null)
        {
            _days.Add((date, day.Value));
        }

        return day.Fault;
    }

    private static string? GapIn(List<DateOnly> dates)
    {
        for (var index = 1; index < dates.Count; index++)
        {
            if (dates[index] == dates[index - 1])
            {
                return $"{Text(dates[index])} is there twice: keep one.";
            }

            if (dates[index] > dates[index - 1].AddDays(1))
            {
                return $"{Text(dates[index - 1].AddDays(1))} is missing. A day that nobody knows may have thawed: add it, or start after it.";
            }
        }

        return null;
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Cell(string[] cells, int column) => column < cells.Length ? cells[column].Trim() : "";

    private static int Find(string[] names, string[] words) =>
        Array.FindIndex(names, name => words.Any(word => name.Contains(word, StringComparison.Ordinal)));

    // "max_f", "Max Temp (°C)", "tmax c": the unit stands last, on its own.
    private static string UnitOf(string name) => name.TrimEnd(')', ']') switch
    {
        [.., ' ' or '_' or '(' or '[' or '°', 'f'] => "F",
        [.., ' ' or '_' or '(' or '[' or '°', 'c'] => "C",
        _ => "",
    };
}
