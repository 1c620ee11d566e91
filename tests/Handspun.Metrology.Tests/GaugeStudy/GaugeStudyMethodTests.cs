using Handspun.Metrology.GaugeStudy;

namespace Handspun.Metrology.Tests.GaugeStudy;

public class GaugeStudyMethodTests
{
    // The gauge manual's pooled analysis of variance, as printed; √2·PV/GRR is 4.875 before it is cut.
    [Fact]
    public void GaugeStudy_OfTheTenPartStudy_HasThePrintedSpreads()
    {
        var study = GaugeStudyMethod.Work(StudyTables.Of("study-10x3x3.csv"));

        Assert.True(study.Pooled);
        Assert.Equal(0.199933, study.Repeatability.Millimetres, 1e-6);
        Assert.Equal(0.226838, study.Reproducibility.Millimetres, 1e-6);
        Assert.Equal(0.302373, study.Gauge.Millimetres, 2e-6);
        Assert.Equal(1.042327, study.Parts.Millimetres, 1e-6);
        Assert.Equal(18.4, study.RepeatabilityPercent, 0.05);
        Assert.Equal(20.9, study.ReproducibilityPercent, 0.05);
        Assert.Equal(27.9, study.GaugePercent, 0.05);
        Assert.Equal(96.0, study.PartsPercent, 0.05);
        Assert.Equal(4.87504136, study.CategoriesRaw, 1e-7);
        Assert.Equal(4, study.Categories);
    }

    // Cano, Moguerza, Redchuk (2012), chapter 5, printed.
    [Fact]
    public void GaugeStudy_OfTheThreePartStudy_HasThePrintedShares()
    {
        var study = GaugeStudyMethod.Work(StudyTables.Of("study-3x3x3.csv"));

        Assert.True(study.Pooled);
        Assert.Equal(0.44619, study.TogetherByChance, 5e-6);
        Assert.Equal(0.14792656, study.Gauge.Millimetres, 1e-8);
        Assert.Equal(0.14597518, study.Repeatability.Millimetres, 1e-8);
        Assert.Equal(0.02394813, study.Reproducibility.Millimetres, 1e-8);
        Assert.Equal(0.25365123, study.Parts.Millimetres, 1e-8);
        Assert.Equal(50.38, study.GaugePercent, 0.005);
        Assert.Equal(86.38, study.PartsPercent, 0.005);
        Assert.Equal(2, study.Categories);
    }

    // Data of Vardeman and VanValkenburg (1999); worked out a second time, outside this program, by the formulas of the random model.
    [Fact]
    public void GaugeStudy_OfTheWeighings_HasTheSpreadsWorkedOutElsewhere()
    {
        var study = GaugeStudyMethod.Work(StudyTables.Of("study-2x5x3.csv"));

        Assert.Equal(0.503774694, study.TogetherByChance, 1e-8);
        Assert.Equal(0.00707008565, study.Repeatability.Millimetres, 1e-10);
        Assert.Equal(0.00354566767, study.Reproducibility.Millimetres, 1e-10);
        Assert.Equal(28.1504303, study.CategoriesRaw, 1e-6);
    }

    // By hand: cells +1 and −1 crossed, trials ± 0.1. MS together 8, trials 0.02, so (8 − 0.02)/2 between the cells and nothing else.
    [Fact]
    public void GaugeStudy_WhereMechanicsAndPartsCrossOver_KeepsTheInteractionAndSetsNegativesToZero()
    {
        var table = new double[2, 2, 2];
        for (var m = 0; m < 2; m++)
        {
            for (var p = 0; p < 2; p++)
            {
                (table[m, p, 0], table[m, p, 1]) = ((m == p ? 1 : -1) + 0.1, (m == p ? 1 : -1) - 0.1);
            }
        }

        var study = GaugeStudyMethod.Work(table);

        Assert.False(study.Pooled);
        Assert.Equal(Math.Sqrt(0.02), study.Repeatability.Millimetres, 1e-12);
        Assert.Equal(Math.Sqrt((8 - 0.02) / 2), study.Reproducibility.Millimetres, 1e-12);
        Assert.Equal(0, study.Parts.Millimetres);
        Assert.Equal(1, study.Categories);
    }

    [Fact]
    public void GaugeStudy_WithoutAnyScatter_TellsPartsApartWithoutEnd()
    {
        var table = new double[2, 3, 2];
        for (var m = 0; m < 2; m++)
        {
            for (var p = 0; p < 3; p++)
            {
                (table[m, p, 0], table[m, p, 1]) = (p, p);
            }
        }

        var study = GaugeStudyMethod.Work(table);

        Assert.Equal(0, study.Gauge.Millimetres);
        Assert.Equal(100, study.PartsPercent, 1e-9);
        Assert.Equal(1000, study.Categories);
    }

    [Theory]
    [InlineData(1, 10, 3, "another one")]
    [InlineData(3, 1, 3, "parts")]
    [InlineData(3, 10, 1, "again")]
    public void GaugeStudy_OfTooSmallATable_SaysWhatToMeasure(int mechanics, int parts, int trials, string word)
    {
        Assert.Contains(word, GaugeStudyMethod.Fault(new double[mechanics, parts, trials]), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => GaugeStudyMethod.Work(new double[mechanics, parts, trials]));
    }

    [Fact]
    public void GaugeStudy_WithAValueMissing_AsksForIt()
    {
        var table = StudyTables.Of("study-3x3x3.csv");
        table[1, 1, 1] = double.NaN;

        Assert.Contains("measure that part again", GaugeStudyMethod.Fault(table), StringComparison.Ordinal);
    }
}
