using Handspun.Metrology.Decision;
using Handspun.Metrology.Fits;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Tests.Reference;

namespace Handspun.Metrology.Tests.Fits;

public class ClearanceTests
{
    [Fact]
    public void Clearance_OfABoreAndABody_IsTheirDifferenceWithBothUncertainties()
    {
        var clearance = Clearance.Of(Size(21.4350, 0.003), Size(21.4000, 0.004));

        Assert.Equal(0.035, clearance.Size.Millimetres, 1e-9);
        Assert.Equal(0.005, clearance.U95.Millimetres, 1e-12);   // 3, 4, 5 (JCGM 100:2008, 5.1.2)
        Assert.Equal(FitKind.Clearance, clearance.Kind);
    }

    [Fact]
    public void Clearance_ThatComesOutNegative_IsAnInterferenceAndSaysWhatToDo()
    {
        var clearance = Clearance.Of(Size(21.40, 0.003), Size(21.43, 0.004));

        Assert.Equal(FitKind.Interference, clearance.Kind);
        Assert.Contains("larger than the bore by 0.0300 mm", clearance.Sentence, StringComparison.Ordinal);
        Assert.Contains("measure both again", clearance.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Clearance_WithinItsUncertainty_IsTooCloseToTell() =>
        Assert.Equal(FitKind.TooCloseToTell, Clearance.Of(Size(21.402, 0.003), Size(21.4, 0.004)).Kind);

    // ISO 14253-1:2013: with U = 8 µm, a tolerance of 9.97 to 10.03 leaves 9.978 to 10.022 to prove conformity in; the same
    // guard band stands at the bounds of a clearance.
    [Theory]
    [InlineData(0.028, Verdict.Undecided)]
    [InlineData(0.0301, Verdict.Within)]
    [InlineData(0.0499, Verdict.Within)]
    [InlineData(0.0521, Verdict.Undecided)]
    [InlineData(0.0689, Verdict.Over)]
    public void Clearance_AgainstALimit_KeepsItsUncertaintyFromBothBounds(double size, Verdict verdict)
    {
        var clearance = Clearance.Of(Size(20 + size, 0.008), Size(20, 0));

        Assert.Equal(verdict, clearance.Against(Tolerance.Between(Length.FromMillimetres(0.022), Length.FromMillimetres(0.058))).Verdict);
    }

    // Handbook tables of expansion: 100 mm over 10 K grow by 0.01150 mm (steel, also JCGM 100 H.1), 0.01080 (grey cast iron), 0.02380 (aluminium alloy).
    [Fact]
    public void Growth_OfTabulatedMaterials_IsThatOfTheTables()
    {
        Assert.Equal(0.0115, ThermalGrowth.Steel.Of(Length.FromMillimetres(100), 10).Millimetres, 1e-12);
        Assert.Equal(0.0108, ThermalGrowth.CastIron.Of(Length.FromMillimetres(100), 10).Millimetres, 1e-12);
        Assert.Equal(0.0238, ThermalGrowth.AluminiumAlloy.Of(Length.FromMillimetres(100), 10).Millimetres, 1e-12);
    }

    [Fact]
    public void Growth_OfEveryRowOfTheTables_IsTheirs() => Assert.All(
        ReferenceData.Rows("thermal-expansion.csv"),
        row => Assert.Equal(row[3], new ThermalGrowth(row[0] * 1e-6, 0).Of(Length.FromMillimetres(row[1]), row[2]).Millimetres, 1e-12));

    [Fact]
    public void Size_OfAWarmBody_IsBroughtToTwentyDegreesWithItsDoubts()
    {
        var size = Size(100.0115, 0.001).AtReference(ThermalGrowth.Steel, 30, celsiusU95: 2);

        Assert.Equal(100, size.Size.Millimetres, 2e-6);
        var parts = Math.Sqrt(0.001 * 0.001 + Math.Pow(11.5e-6 * 2 * 100.0115, 2) + Math.Pow(0.5e-6 * 10 * 100.0115, 2));
        Assert.Equal(parts, size.U95.Millimetres, 1e-12);
    }

    [Fact]
    public void Size_ThatCannotBe_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Size(0, 0.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => Size(20, -0.001));
    }

    private static MeasuredSize Size(double millimetres, double u95) => MeasuredSize.Of(Length.FromMillimetres(millimetres), Length.FromMillimetres(u95));
}
