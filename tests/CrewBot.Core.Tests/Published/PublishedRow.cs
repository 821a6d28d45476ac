using System.Globalization;

namespace CrewBot.Core.Tests.Published;

/// <summary>
/// One published or separately computed figure, with the inputs it belongs to and how closely it must be met.
/// </summary>
public sealed record PublishedRow(
    string Quantity,
    IReadOnlyDictionary<string, string> Inputs,
    string Expected,
    string Unit,
    string Tolerance,
    string Source)
{
    /// <summary>Reads an input as a number; weights may be fractions such as 1/16.</summary>
    public double this[string input]
    {
        get
        {
            var parts = Inputs[input].Split('/');
            return parts.Length == 2 ? Number(parts[0]) / Number(parts[1]) : Number(parts[0]);
        }
    }

    public double Value => Number(Expected);

    /// <summary>Both ends of a range.</summary>
    public double[] Ends => [.. Expected.Split("..").Select(Number)];

    public bool Has(string input) => Inputs.ContainsKey(input);

    /// <summary>Asserts that a computed value meets the figure within the row's own tolerance.</summary>
    public void Check(double actual)
    {
        if (Tolerance == "range")
        {
            Assert.InRange(actual, Ends[0], Ends[1]);
            return;
        }

        var (kind, size) = (Tolerance[..3], Number(Tolerance[4..]));
        Check(actual, kind == "rel" ? size * Math.Abs(Value) : size);
    }

    /// <summary>Asserts with a tolerance that the caller gives a reason for.</summary>
    public void Check(double actual, double tolerance) => Assert.Equal(Value, actual, tolerance);

    public override string ToString() =>
        $"{Quantity}({string.Join("; ", Inputs.Select(input => $"{input.Key}={input.Value}"))}) = {Expected} {Unit}";

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
