using Handspun.Metrology.Quantities;
using Handspun.Metrology.Reckonings;

namespace Handspun.Metrology.Tests.Reckonings;

public class GearLashTests
{
    [Fact]
    public void GearLash_SeenFurtherOut_IsLessAtThePitchCircle()
    {
        var answer = GearLash.AtPitchCircle(Mm(0.09, 0.004), Mm(30, 0.3), Mm(45, 0.9)).Answer!;

        // Relative doubts: 4/90, 1/100, 2/100.
        Assert.Equal(0.06, answer.Result.Value, 1e-12);
        Assert.Equal(0.06 * Math.Sqrt(Math.Pow(4.0 / 90, 2) + 0.01 * 0.01 + 0.02 * 0.02), answer.U95.Value, 1e-12);
        Assert.Equal("0.090 mm × 30.000 mm ÷ 45.000 mm = 0.060 mm ± 0.003 mm", answer.Filled(ShownUnit.Millimetres));
    }

    [Fact]
    public void GearLash_OfNoPlay_IsNoneWithThePlaysDoubt()
    {
        var answer = GearLash.AtPitchCircle(Mm(0, 0.004), Mm(30, 0.3), Mm(30, 0.9)).Answer!;

        Assert.Equal((0, 0.004), (answer.Result.Value, Math.Round(answer.U95.Value, 12)));
    }

    [Fact]
    public void GearLash_OfWhatCannotBe_SaysWhatToDo()
    {
        Assert.Contains("play is missing", GearLash.AtPitchCircle(null, Mm(30, 0), Mm(30, 0)).Missing, StringComparison.Ordinal);
        Assert.Contains("looks like inches", GearLash.AtPitchCircle(Mm(0.1, 0), Mm(1.2, 0), Mm(30, 0)).Missing, StringComparison.Ordinal);
        Assert.Contains("radius at the indicator", GearLash.AtPitchCircle(Mm(0.1, 0), Mm(30, 0), Mm(0, 0)).Missing, StringComparison.Ordinal);
    }

    private static Measured<Length> Mm(double value, double u95) => new(Length.FromMillimetres(value), Length.FromMillimetres(u95));
}
