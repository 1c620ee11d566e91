using Handspun.Metrology.GaugeStudy;

namespace Handspun.Metrology.Tests.GaugeStudy;

public class StudyAnovaTests
{
    // Certified by NIST/ITL StRD, one-way analysis of variance; AtmWtAg holds no more digits than ten in double precision.
    [Theory]
    [InlineData("nist-sirstv.csv", 5.11462616000000E-02, 2.16636560000000E-01, 1.18046237440255, 1e-12)]
    [InlineData("nist-atmwtag.csv", 3.63834187500000E-09, 1.04951729166667E-08, 1.59467335677930E+01, 1e-7)]
    public void StudyAnova_OfCertifiedData_HasTheCertifiedSums(string file, double between, double within, double ratio, double relative)
    {
        var anova = StudyAnova.Of(StudyTables.OneWay(file));

        Close(between, anova.Parts.SumOfSquares, relative);
        Close(within, anova.Trials.SumOfSquares, relative);
        Close(ratio, anova.Parts.MeanSquare / anova.Trials.MeanSquare, relative);
    }

    // Simon-Lesage sets 1, 4 and 7 of the same source: nine treatments, 21 values each, F = 21 whatever the leading digits.
    [Theory]
    [InlineData(0, 1e-12)]
    [InlineData(1e6, 1e-8)]
    [InlineData(1e12, 1e-2)]
    public void StudyAnova_OfManyLeadingDigits_KeepsTheRatio(double leading, double relative)
    {
        double[] firsts = [1.4, 1.3, 1.5, 1.3, 1.5, 1.3, 1.5, 1.3, 1.5];
        var table = new double[1, 9, 21];
        for (var part = 0; part < 9; part++)
        {
            for (var trial = 0; trial < 21; trial++)
            {
                var first = Shift(leading, firsts[part]);
                table[0, part, trial] = trial == 0 ? leading + first : leading + first + (trial % 2 == 1 ? -0.1 : 0.1);
            }
        }

        var anova = StudyAnova.Of(table);

        Close(21, anova.Parts.MeanSquare / anova.Trials.MeanSquare, relative);
        Close(1.68, anova.Parts.SumOfSquares, relative);
        Close(1.80, anova.Trials.SumOfSquares, relative);
    }

    // Sums of squares as the manual prints them.
    [Fact]
    public void StudyAnova_OfTheTenPartStudy_HasThePrintedSums()
    {
        var anova = StudyAnova.Of(StudyTables.Of("study-10x3x3.csv"));

        Assert.Equal((2, 3.1673), (anova.Mechanics.DegreesOfFreedom, Math.Round(anova.Mechanics.SumOfSquares, 4)));
        Assert.Equal((9, 88.3619), (anova.Parts.DegreesOfFreedom, Math.Round(anova.Parts.SumOfSquares, 4)));
        Assert.Equal((18, 0.3590), (anova.Together.DegreesOfFreedom, Math.Round(anova.Together.SumOfSquares, 4)));
        Assert.Equal((60, 2.7589), (anova.Trials.DegreesOfFreedom, Math.Round(anova.Trials.SumOfSquares, 4)));
    }

    // The sets with leading digits begin at .4 too, and the rule of the others is the same.
    private static double Shift(double leading, double first) => leading == 0 ? first : first - 1;

    private static void Close(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - relative * Math.Abs(expected), expected + relative * Math.Abs(expected));
}
