using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using MathNet.Numerics.Distributions;

namespace Handspun.Metrology.Tests.Decision;

public class ConformityRuleTests
{
    private static readonly Length Limit = Length.FromInches(0.005);

    [Theory]
    [InlineData(0.100, 0.020, Verdict.Within)]
    [InlineData(0.110, 0.020, Verdict.Undecided)]
    [InlineData(0.127, 0.000, Verdict.Within)]
    [InlineData(0.128, 0.000, Verdict.Over)]
    [InlineData(0.140, 0.020, Verdict.Undecided)]
    [InlineData(0.148, 0.020, Verdict.Over)]
    public void Verdict_AgainstAnUpperLimit_NeedsMoreThanTheUncertainty(double value, double expanded, Verdict verdict) =>
        Assert.Equal(verdict, Decide(value, expanded, Tolerance.AtMost(Limit)).Verdict);

    [Theory]
    [InlineData(0.5, Verdict.Within)]
    [InlineData(0.31, Verdict.Undecided)]
    [InlineData(0.25, Verdict.Over)]
    [InlineData(0.75, Verdict.Over)]
    public void Verdict_BetweenTwoLimits_IsOverOutsideEither(double value, Verdict verdict) => Assert.Equal(
        verdict,
        Decide(value, 0.02, Tolerance.Between(Length.FromMillimetres(0.3), Length.FromMillimetres(0.7))).Verdict);

    [Fact]
    public void Verdict_WiderThanTheTolerance_IsUndecided() => Assert.Equal(
        Verdict.Undecided,
        Decide(0.5, 1, Tolerance.Between(Length.FromMillimetres(0.3), Length.FromMillimetres(0.7))).Verdict);

    // JCGM 106:2012, 7.2 (upper limit, breakdown voltage) and 7.4 (two limits, viscosity): printed 0.92 and 0.66. The printed
    // figures are from memory; the digits were worked out again from the inputs.
    [Theory]
    [InlineData(-5.47, 0.05, null, -5.40, 0.9192433407662273)]
    [InlineData(13.6, 1.8, 12.5, 16.3, 0.6626297864953079)]
    public void ProbabilityOutside_OfThePublishedExamples_IsTheirs(double value, double standard, double? lower, double upper, double inside)
    {
        var tolerance = lower is { } bottom
            ? Tolerance.Between(Length.FromMillimetres(bottom), Length.FromMillimetres(upper))
            : Tolerance.AtMost(Length.FromMillimetres(upper));

        Assert.Equal(1 - inside, Decide(value, 2 * standard, tolerance).ProbabilityOutside, 1e-9);
    }

    // JCGM 106:2012, Table 1 (from memory, the abscissas worked out again): conformance probability against (limit − value) / u.
    [Theory]
    [InlineData(0.80, 0.8416212335729143)]
    [InlineData(0.90, 1.2815515655446004)]
    [InlineData(0.95, 1.6448536269514722)]
    [InlineData(0.99, 2.3263478740408408)]
    [InlineData(0.999, 3.090232306167813)]
    public void ProbabilityOutside_ByDistanceFromTheLimit_IsTheTables(double inside, double distance) =>
        Assert.Equal(1 - inside, Decide(1 - distance * 0.1, 0.2, Tolerance.AtMost(Length.FromMillimetres(1))).ProbabilityOutside, 1e-9);

    // Consumer's and producer's risk of a process 0.12 wide, measured to 0.04, held to ±0.20 (the parameters of the resistors of
    // JCGM 106:2012, 9.5.3, from memory; the risks of its integrals worked out with another program). A guard band of w is an
    // expanded uncertainty of w; the rule of ISO 14253-1 takes w = 2 × 0.04.
    [Theory]
    [InlineData(0, 0.0189422067, 0.0372078002)]
    [InlineData(0.04, 0.00433407222, 0.114656578)]
    [InlineData(0.08, 0.000468633599, 0.24766964)]
    public void Verdict_OverAWholeProcess_CarriesTheRisksOfTheGuardBand(double guard, double consumer, double producer)
    {
        const double step = 0.0005, process = 0.12, measurement = 0.04, limit = 0.2, centre = 1;
        var tolerance = Tolerance.Between(Length.FromMillimetres(centre - limit), Length.FromMillimetres(centre + limit));
        double[] accepted = [.. Cells(0.5, step).Where(measured => Decide(centre + measured, guard, tolerance).Verdict == Verdict.Within)];
        var (least, most) = (accepted[0] - step / 2, accepted[^1] + step / 2);   // acceptance ends at borders of cells
        var (wrongly, missed) = (0.0, 0.0);
        foreach (var truth in Cells(1, step))
        {
            var share = Normal.CDF(truth, measurement, most) - Normal.CDF(truth, measurement, least);
            var density = step * Normal.PDF(0, process, truth);
            wrongly += Math.Abs(truth) > limit ? density * share : 0;
            missed += Math.Abs(truth) < limit ? density * (1 - share) : 0;
        }

        Assert.Equal(consumer, wrongly, 1e-6);
        Assert.Equal(producer, missed, 1e-6);
    }

    // Chance of a false acceptance for a result that stands on the acceptance limit: one U of guard band, less than 2.5 %
    // (ILAC-G8:09/2019, Table 1, from memory; worked out again).
    [Fact]
    public void ProbabilityOutside_OfAResultJustAccepted_IsThatOfOneUOfGuardBand()
    {
        var decision = Decide(0.98 - 1e-12, 0.02, Tolerance.AtMost(Length.FromMillimetres(1)));

        Assert.Equal(Verdict.Within, decision.Verdict);
        Assert.Equal(0.022750131948179195, decision.ProbabilityOutside, 1e-9);
    }

    [Fact]
    public void Decide_WithANegativeUncertainty_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Decide(0.1, -0.01, Tolerance.AtMost(Limit)));

    // The middles of cells from −width to +width.
    private static IEnumerable<double> Cells(double width, double step) =>
        Enumerable.Range(0, (int)Math.Round(2 * width / step)).Select(i => -width + (i + 0.5) * step);

    private static ConformityDecision Decide(double value, double expanded, Tolerance tolerance) =>
        ConformityRule.Decide(Length.FromMillimetres(value), Length.FromMillimetres(expanded), tolerance);
}
