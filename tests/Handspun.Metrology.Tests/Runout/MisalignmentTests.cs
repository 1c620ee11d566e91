using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Tests.Reference;

namespace Handspun.Metrology.Tests.Runout;

public class MisalignmentTests
{
    // Angle, cosine, the two digits that shop tables print.
    [Fact]
    public void LeverFactor_OfEveryAngleOfTheTable_IsTheTables() => Assert.All(ReferenceData.Rows("lever-cosine.csv"), row =>
    {
        Assert.Equal(row[1], Misalignment.LeverFactor(row[0]), 5e-10);
        Assert.Equal(row[2], Misalignment.LeverFactor(row[0]), 0.0051);
    });

    // The worked example of shop pages: at 60 degrees a reading of 0.004 in is 0.002 in of the part.
    [Fact]
    public void LeverFactor_AtSixtyDegrees_HalvesTheReading() => Assert.Equal(0.002, 0.004 * Misalignment.LeverFactor(60), 1e-15);

    [Theory]
    [InlineData(-1)]
    [InlineData(90)]
    [InlineData(double.NaN)]
    public void LeverFactor_OfAnAngleThatCannotBe_IsRefused(double degrees) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Misalignment.LeverFactor(degrees));

    [Theory]
    [InlineData(null, 0.0013704652)]   // a plunger that leans by 3°: 1 − cos 3°
    [InlineData(0.0, 0.0038053019)]    // a lever along the surface, 5° off: 1 − cos 5°
    [InlineData(30.0, 1 - 0.819152044 / 0.866025404)]   // one at 30° that stands at 35°: the cosines of the table
    public void LargestShare_OfAGauge_IsThatOfItsDoubt(double? leverDegrees, double share)
    {
        var gauge = leverDegrees is { } degrees ? new GaugeTraits().AtLever(degrees) : new GaugeTraits();

        Assert.Equal(share, Misalignment.LargestShare(gauge), 2e-9);
    }

    [Fact]
    public void Gauge_AsALever_ShowsFinerStepsAndSmallerErrors()
    {
        var lever = new GaugeTraits { Resolution = Length.FromMillimetres(0.002), ErrorLimit = Length.FromMillimetres(0.004) }.AtLever(60);

        Assert.Equal(0.001, lever.Resolution.Millimetres, 1e-15);
        Assert.Equal(0.002, lever.ErrorLimit.Millimetres, 1e-15);
    }

    // A thousand kelvin, so that it shows: steel grows by 0.0115 of its length (handbook tables: 11.5e-6), and two standard uncertainties
    // of a rectangle as wide as that are 2 × 0.1 mm × 0.0115 / √3 (JCGM 100:2008, 4.3.7), beside those of the gauge's stand.
    [Theory]
    [InlineData(20, 0)]
    [InlineData(1020, 0.0115)]
    [InlineData(-980, 0.0115)]
    public void Runout_AtATemperature_DoubtsTheGrowth(double celsius, double share)
    {
        var warm = RunoutMethod.Measure(EncodedShaft(), new GaugeTraits { Resolution = Length.FromMillimetres(0.0001), Celsius = celsius }, new RunoutSettings());

        Assert.Equal(2 * 0.1 * Math.Sqrt(0.0013704652 * 0.0013704652 + share * share) / Math.Sqrt(3), warm.TirU95!.Value.Millimetres, 2e-5);
    }

    [Fact]
    public void Runout_ThroughALever_DoubtsItsAngle()
    {
        var capture = EncodedShaft();
        var gauge = new GaugeTraits { Resolution = Length.FromMillimetres(0.0001) };

        var plunger = RunoutMethod.Measure(capture, gauge, new RunoutSettings());
        var lever = RunoutMethod.Measure(capture, gauge.AtLever(30), new RunoutSettings());

        // Two standard uncertainties of a rectangle as wide as the share: 2 × 0.1 mm × share / √3 (JCGM 100:2008, 4.3.7).
        Assert.Equal(2 * 0.1 * 0.0013704652 / Math.Sqrt(3), plunger.TirU95!.Value.Millimetres, 2e-5);
        Assert.Equal(2 * 0.1 * 0.054124693 / Math.Sqrt(3), lever.TirU95!.Value.Millimetres, 2e-5);
    }

    // Off centre by 0.05 mm, four turns, every angle told.
    private static RotationCapture EncodedShaft()
    {
        double[] seconds = [.. Enumerable.Range(0, 400).Select(i => 0.02 * i)];
        return new()
        {
            Seconds = seconds,
            Millimetres = seconds.Select(at => 0.05 * Math.Cos(Math.PI * at)).ToArray(),
            EncoderSeconds = seconds,
            EncoderDegrees = seconds.Select(at => 180 * at).ToArray(),
        };
    }
}
