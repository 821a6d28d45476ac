using System.Globalization;
using CrewBot.Chat.Quantities;
using CsCheck;

namespace CrewBot.Chat.Tests.Quantities;

/// <summary>The quick ways against the runtime's own.</summary>
public sealed class NumberWritingTests
{
    // Any number, and those that people write: a few decimals, and halves in between.
    private static readonly Gen<double> AnyNumber = Gen.OneOf(
        Gen.Double,
        Gen.Double[-2e6, 2e6],
        Gen.Select(Gen.Int[-20_000, 20_000], Gen.Int[0, 3], static (whole, decimals) => whole / Math.Pow(10, decimals)),
        Gen.Int[0, 40_000].Select(static halves => halves * 0.05),
        Gen.Int[0, 40_000].Select(static halves => Math.BitDecrement(halves * 0.005)));

    [Fact]
    public void Shortest_AnyNumber_IsWrittenAsTheRuntimeDoes() =>
        AnyNumber.Sample(number => NumberWriting.Shortest(number) == number.ToString(CultureInfo.InvariantCulture));

    [Fact]
    public void Tenths_AnyNumber_IsWrittenAsTheRuntimeDoes() =>
        AnyNumber.Sample(number => NumberWriting.Tenths(number) == number.ToString("0.0", CultureInfo.InvariantCulture));

    [Fact]
    public void Hundredths_AnyNumber_IsWrittenAsTheRuntimeDoes() =>
        AnyNumber.Sample(number => NumberWriting.Hundredths(number) == number.ToString("0.00", CultureInfo.InvariantCulture));
}
