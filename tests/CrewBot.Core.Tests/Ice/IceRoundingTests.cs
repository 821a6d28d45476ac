using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Ice;

public sealed class IceRoundingTests
{
    // Four inches are 10.16 cm: nobody who measured 10 cm has them.
    [Theory]
    [PublishedRows("inch_to_cm_up")]
    public void Required_FourInches_IsMoreThanTenCentimetres(PublishedRow row)
    {
        var required = Length.FromInches(row["in"]);

        row.Check(required.Centimeters);
        Assert.Equal(10.2m, IceRounding.RequiredCentimetres(required));
        Assert.Equal(CarryVerdict.StayOff, VerdictOn(Length.FromCentimeters(10.1)));
        Assert.Equal(10.1m, IceRounding.MeasuredCentimetres(required));
    }

    [Theory]
    [InlineData(6)]
    [InlineData(10)]
    [InlineData(12)]
    [InlineData(0.1)]
    public void Inches_WholeTenths_StayWhatTheyAre(double inches)
    {
        Assert.Equal((decimal)inches, IceRounding.RequiredInches(Length.FromInches(inches)));
        Assert.Equal((decimal)inches, IceRounding.MeasuredInches(Length.FromInches(inches)));
    }

    [Fact]
    public void Shown_ReadBack_IsNeverMorePermissive() => Gen.Double[0, 2.5].Sample(metres =>
    {
        var exact = Length.FromMeters(metres);
        const double noise = 1e-3;

        return Nanometres(IceRounding.RequiredInches(exact), LengthUnit.Inch) >= exact.Nanometers - noise
            && Nanometres(IceRounding.RequiredCentimetres(exact), LengthUnit.Centimeter) >= exact.Nanometers - noise
            && Nanometres(IceRounding.MeasuredInches(exact), LengthUnit.Inch) <= exact.Nanometers + noise
            && Nanometres(IceRounding.MeasuredCentimetres(exact), LengthUnit.Centimeter) <= exact.Nanometers + noise;
    });

    [Fact]
    public void Verdict_SameIceInOtherUnits_IsTheSame() => Gen.Int[0, 400].Sample(tenths =>
    {
        var nanometres = tenths * 2_540_000L; // tenths of an inch, exact
        var inches = VerdictOn(new ExactLength(nanometres, LengthUnit.Inch).Length);
        var centimetres = VerdictOn(new ExactLength(nanometres, LengthUnit.Centimeter).Length);
        var metres = VerdictOn(Length.FromMeters(nanometres * 1e-9));

        return inches == centimetres && inches == metres;
    });

    [Fact]
    public void Verdict_ExactlyTheFigure_MeetsIt()
    {
        Assert.Equal(CarryVerdict.MeetsTheFigure, VerdictOn(Length.FromInches(6)));
        Assert.Equal(CarryVerdict.LessThanRequired, VerdictOn(Length.FromInches(5.99)));
        Assert.Equal(CarryVerdict.StayOff, VerdictOn(Length.FromInches(3.99)));
    }

    private static long Nanometres(decimal number, LengthUnit unit) => ExactLength.From(number, unit).Nanometres;

    private static CarryVerdict VerdictOn(Length clear) => CarryAnswer.Of(
        Requirement.For(new(IceUse.OnFoot, Mass.FromKilograms(100), Duration.Zero), null, [], false, Lakes.Cold, Lakes.Now),
        Lakes.At(Lakes.Report(Lakes.Landing, 1, IceSection.Of(IceKind.Clear, clear)))).Verdict;
}
