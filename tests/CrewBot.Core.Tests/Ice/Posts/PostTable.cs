using System.Globalization;
using CrewBot.Core.Ice;
using CrewBot.Core.Ice.Posts;
using UnitsNet;

namespace CrewBot.Core.Tests.Ice.Posts;

/// <summary>Posts with what each says, one a line: <c>post => what it says</c>.</summary>
public static class PostTable
{
    private static readonly Dictionary<string, double> Units = new() { ["in"] = 0.0254, ["ft"] = 0.3048, ["mm"] = 0.001, ["cm"] = 0.01, ["m"] = 1 };

    /// <summary>When every post of the tables was posted: a Saturday.</summary>
    public static DateTimeOffset Posted { get; } = new(2026, 1, 10, 15, 0, 0, TimeSpan.FromHours(-6));

    /// <summary>The waters that the crew has.</summary>
    public static string[] Waters { get; } = ["Loon Basin", "Tamarack Bay"];

    public static IReadOnlyList<(string Post, string Expected)> Read(string file)
    {
        using var reader = new StreamReader(typeof(PostTable).Assembly.GetManifestResourceStream(file)!);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => !line.StartsWith('#'))
            .Select(line => line.Split(" => "))
            .Select(parts => (parts[0].Replace("\\n", "\n", StringComparison.Ordinal), parts[1].Trim()))];
    }

    /// <summary>What the reader makes of a post, in the table's words; thicknesses in the unit that the row is written in.</summary>
    public static string Told(string post, string expected)
    {
        var read = IcePostReader.Read(post, Posted, Waters);
        if (read.IsEmpty)
        {
            return "nothing";
        }

        var units = expected.Split(';').Select(item => item.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Select(words => words.Length > 1 ? words[1] : "").ToList();
        List<string> told = [];
        foreach (var thickness in read.Thicknesses)
        {
            var unit = told.Count < units.Count && units[told.Count] is "in" or "cm" or "mm" or "m" or "ft" ? units[told.Count] : "in";
            told.Add(Thickness(thickness, unit));
        }

        told.AddRange(read.Hazards.Select(hazard => Words(hazard.Hazard.ToString().ToLowerInvariant(), hazard.IsHearsay ? "hearsay" : "", At(hazard.Place))));
        told.AddRange(read.UnitMissing.Select(number => Words(Text(number.Number), "unit", At(number.Place))));
        if (read.IsContradictory)
        {
            told.Add("contradiction");
        }

        if (read.Time is { } time)
        {
            told.Add("when " + time.At.ToString(time.IsExact ? "d MMM HH:mm" : "d MMM", CultureInfo.InvariantCulture));
        }

        return string.Join("; ", told.Order(StringComparer.Ordinal));
    }

    /// <summary>The most that any thickness of a row counts as, in metres of clear ice.</summary>
    public static double MostExpected(string expected) => expected.Split(';')
        .Select(item => item.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        .Where(words => words.Length > 1 && Units.ContainsKey(words[1]))
        .Select(words => double.Parse(words[0].Split('-')[0], CultureInfo.InvariantCulture) * Units[words[1]] * Share(words.Contains("clear") ? IceKind.Clear : IceKind.Unknown))
        .DefaultIfEmpty(0).Max();

    /// <summary>The most that any thickness read from a post counts as, in metres of clear ice.</summary>
    public static double MostTold(string post) =>
        IcePostReader.Read(post, Posted, Waters).Thicknesses.Select(thickness => thickness.Least.Meters * Share(thickness.Kind)).DefaultIfEmpty(0).Max();

    /// <summary>A row's expectation with its items in the order that <see cref="Told"/> uses.</summary>
    public static string Ordered(string expected) => string.Join("; ", expected.Split(';').Select(item => item.Trim()).Order(StringComparer.Ordinal));

    private static double Share(IceKind kind) => kind == IceKind.Clear ? 1 : 0.5;

    private static string Thickness(PostedThickness thickness, string unit)
    {
        var (least, most) = (In(thickness.Least, unit), In(thickness.Most, unit));
        return Words(
            least == most || unit == "cm" && most - least < 1 ? Text(least) : $"{Text(least)}-{Text(most)}",
            unit,
            thickness.Kind == IceKind.Unknown ? "" : thickness.Kind.ToString().ToLowerInvariant(),
            thickness.IsHedged ? "about" : "",
            thickness.IsHearsay ? "hearsay" : "",
            At(thickness.Place));
    }

    private static double In(Length length, string unit) => Math.Round(unit switch
    {
        "cm" => length.Centimeters,
        "mm" => length.Millimeters,
        "m" => length.Meters,
        "ft" => length.Feet,
        _ => length.Inches,
    }, 6);

    private static string At(string? place) => place is null ? "" : "@ " + place;

    private static string Text(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Words(params string[] words) => string.Join(' ', words.Where(word => word.Length > 0));
}
