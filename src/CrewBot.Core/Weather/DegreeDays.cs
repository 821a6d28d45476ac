namespace CrewBot.Core.Weather;

/// <summary>Frost summed over days: one degree below freezing for one day is one degree-day.</summary>
/// <param name="Celsius">In °C·day; one is 1.8 °F·day.</param>
public readonly record struct DegreeDays(double Celsius)
{
    public double Fahrenheit => Celsius * 1.8;

    public static DegreeDays FromFahrenheit(double fahrenheit) => new(fahrenheit / 1.8);

    public override string ToString() => FormattableString.Invariant($"{Celsius:0.##} °C·day");
}
