using Handspun.Metrology.Quantities;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Metrology.Tests.ShaftLine;

/// <summary>The first-order uncertainty against the propagation of distributions by Monte Carlo (JCGM 101:2008), every input normal.</summary>
public class ShaftLineUncertaintyTests
{
    private const int Draws = 20_000;

    [Theory]
    [InlineData(20, 35)]     // same side
    [InlineData(100, 275)]   // opposite
    [InlineData(0, 90)]      // crosswise
    public void Uncertainties_OfTheShaftLines_AreThoseOfMonteCarlo(double driveAngle, double pinionAngle)
    {
        var crank = new CrankRunout(
            End(0.025, 0.002, driveAngle, 6, 55, 1), End(0.018, 0.0016, pinionAngle, 8, 38, 1), Mm(130), Mm(2), Angle.FromDegrees(40), 5);
        var result = ShaftLineMethod.Of(crank);
        var chance = new Random(17);
        var draws = Enumerable.Range(0, Draws).Select(_ => ShaftLineMethod.Of(Drawn(crank, chance))).ToArray();

        Near(draws.Select(d => d.DriveSide!.Tilt.Ratio), result.DriveSide!.TiltU95.Ratio);
        Near(draws.Select(d => d.PinionSide!.Tilt.Ratio), result.PinionSide!.TiltU95.Ratio);
        Near(draws.Select(d => d.DriveSide!.Offset.Millimetres), result.DriveSide.OffsetU95.Millimetres);
        Near(draws.Select(d => d.PinionSide!.Offset.Millimetres), result.PinionSide.OffsetU95.Millimetres);
        Near(draws.Select(d => d.Apart!.Kink.Ratio), result.Apart!.KinkU95.Ratio, sure: result.Apart.KinkToward is not null);
        Near(draws.Select(d => d.Apart!.Offset.Millimetres), result.Apart.OffsetU95.Millimetres, sure: result.Apart.OffsetToward is not null);
    }

    // Whatever the uncertainty, a direction that is named wrongly must be rare: 5 in 100 at k = 2, and the bands only make it rarer.
    [Theory]
    [InlineData(6)]
    [InlineData(20)]
    [InlineData(30)]
    public void Side_NamedFromUncertainAngles_IsSeldomWrong(double angleU95)
    {
        var chance = new Random(23);
        var (named, wrong) = (0, 0);
        for (var i = 0; i < Draws; i++)
        {
            var truth = new CrankRunout(
                End(0.025, 0.002, 360 * chance.NextDouble(), 0, 55, 1), End(0.018, 0.002, 360 * chance.NextDouble(), 0, 38, 1), Mm(130), Mm(2), null, 0);
            var apart = Math.Abs(truth.DriveSide.Toward.Degrees - truth.PinionSide.Toward.Degrees);
            apart = Math.Min(apart, 360 - apart);
            var right = apart < 60 ? HighSpots.SameSide : apart > 120 ? HighSpots.Opposite : HighSpots.Crosswise;
            var seen = ShaftLineMethod.Of(Drawn(truth with { DriveSide = Unsure(truth.DriveSide), PinionSide = Unsure(truth.PinionSide) }, chance)).HighSpots;
            named += seen is null ? 0 : 1;
            wrong += seen is null || seen == right ? 0 : 1;
        }

        Assert.True(named > 0.1 * Draws, $"{named} named");
        Assert.True(wrong < 0.05 * named, $"{wrong} of {named}");

        EndRunout Unsure(EndRunout end) => end with { TowardU95Degrees = angleU95 };
    }

    // The inputs deviate by a few in a hundred; what the first order leaves out is of the square of that. A vector that may be none
    // at all has the greatest deviation of any direction, which is too much rather than too little.
    private static void Near(IEnumerable<double> draws, double u95, bool sure = true)
    {
        double[] values = [.. draws];
        var mean = values.Average();
        var deviation = Math.Sqrt(values.Average(value => (value - mean) * (value - mean)));
        Assert.InRange(u95 / (2 * deviation), 0.97, sure ? 1.03 : 2);
    }

    private static EndRunout End(double e, double u, double angle, double angleU, double distance, double distanceU) =>
        new(Mm(e), Mm(u), Angle.FromDegrees(angle), angleU, Mm(distance), Mm(distanceU));

    private static CrankRunout Drawn(CrankRunout crank, Random chance) => crank with
    {
        DriveSide = Drawn(crank.DriveSide, chance),
        PinionSide = Drawn(crank.PinionSide, chance),
        BetweenBearings = Drawn(crank.BetweenBearings, crank.BetweenBearingsU95, chance),
    };

    private static EndRunout Drawn(EndRunout end, Random chance) => end with
    {
        Eccentricity = Drawn(end.Eccentricity, end.EccentricityU95, chance),
        Toward = Angle.FromDegrees(end.Toward.Degrees + end.TowardU95Degrees!.Value / 2 * Normal(chance)),
        FromBearing = Drawn(end.FromBearing, end.FromBearingU95, chance),
    };

    private static Length Drawn(Length value, Length u95, Random chance) => Mm(value.Millimetres + u95.Millimetres / 2 * Normal(chance));

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
