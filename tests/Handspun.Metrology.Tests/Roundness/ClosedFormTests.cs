using Handspun.Metrology.Roundness;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Roundness;

/// <summary>Shapes whose out-of-roundness is known by geometry.</summary>
public class ClosedFormTests
{
    private const double Amplitude = 0.004;

    // Lobes evenly round the turn alternate high and low four times or more, which no move of the centre can lessen.
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(12)]
    public void Roundness_OfPureLobes_IsTwiceTheAmplitudeAboutEveryCircle(int lobes)
    {
        var degrees = Profiles.Degrees(360);
        double[] heights = [.. degrees.Select(a => Amplitude * Math.Cos(lobes * a * Math.PI / 180))];
        var (x, y) = Profiles.Points(degrees, heights);

        // Across two lobes a circle inside has room between two samples to move aside, by half the step between them and no more.
        Assert.All(Profiles.Round(x, y).All(), circle => Assert.Equal(2 * Amplitude, circle.PeakToValley.Millimetres, lobes == 2 ? 2e-4 : 1e-11));
        Assert.All(RoundnessMethod.OfTurn(degrees, heights).All(), circle => Assert.Equal(2 * Amplitude, circle.PeakToValley.Millimetres, 1e-14));
    }

    [Theory]
    [InlineData(2, 17.3)]
    [InlineData(3, 40)]
    [InlineData(7, 211.9)]
    public void Roundness_OfAFittedWave_IsTwiceTheAmplitudeWhereverTheSamplesFall(int lobes, double phase)
    {
        var waves = new Harmonic[lobes];
        waves[0] = new(0.03, -0.02);
        waves[^1] = new(Amplitude * Math.Cos(phase), Amplitude * Math.Sin(phase));
        var result = RoundnessMethod.OfProfile(new(0.7, waves));

        Assert.All(result.All(), circle =>
        {
            Assert.Equal(2 * Amplitude, circle.PeakToValley.Millimetres, 1e-12);
            Assert.Equal(0.03, circle.CentreX.Millimetres, 1e-9);
            Assert.Equal(-0.02, circle.CentreY.Millimetres, 1e-9);
        });
    }

    // r = 25 mm + 4 µm·cos(3a − 40°) at whole degrees; the zone worked out elsewhere.
    [Fact]
    public void Roundness_OfThreeLobesAtWholeDegrees_IsTheKnownZone()
    {
        var degrees = Profiles.Degrees(360);
        var (x, y) = Profiles.Points(degrees, [.. degrees.Select(a => 0.004 * Math.Cos((3 * a - 40) * Math.PI / 180))], 25);
        var result = Profiles.Round(x, y);

        Assert.Equal(0.007998781561258994, result.MinimumZone!.PeakToValley.Millimetres, 25e-9);
        Assert.Equal(0.0079987815612485, result.LeastSquares!.PeakToValley.Millimetres, 25e-9);
    }

    [Theory]
    [InlineData(360, 0.015)]
    [InlineData(7, 3.0)]
    [InlineData(3, 0.0)]
    public void Roundness_OfATrueCircleOffCentre_IsNone(int count, double offset)
    {
        var (x, y) = Profiles.Points(Profiles.Degrees(count), new double[count]);
        x = [.. x.Select(value => value + offset)];

        Assert.All(Profiles.Round(x, y).All(), circle =>
        {
            Assert.Equal(0, circle.PeakToValley.Millimetres, 1e-12);
            Assert.Equal(Profiles.Radius, circle.Radius.Millimetres, 1e-11);
            Assert.Equal(offset, circle.CentreX.Millimetres, 1e-11);
        });
    }

    // The limaçon is the eccentric circle but for e²/4R in two lobes (closed form); e 0.015 mm, R 20 mm, every 5 degrees.
    [Fact]
    public void Roundness_OfAnEccentricCircleByIndicator_IsWhatTheLimaconLeaves()
    {
        const double offset = 0.015;
        var degrees = Profiles.Degrees(72);
        double[] heights = [.. degrees.Select(a =>
        {
            var (s, c) = Math.SinCos((a - 63) * Math.PI / 180);
            return Math.Sqrt(Profiles.Radius * Profiles.Radius - offset * offset * s * s) + offset * c - Profiles.Radius;
        })];
        const double left = offset * offset / (2 * Profiles.Radius);

        Assert.All(RoundnessMethod.OfTurn(degrees, heights).All(), circle =>
        {
            Assert.InRange(circle.PeakToValley.Millimetres, 0.99 * left, 1.001 * left);
            Assert.Equal(offset, Math.Sqrt(Math.Pow(circle.CentreX.Millimetres, 2) + Math.Pow(circle.CentreY.Millimetres, 2)), left);
        });
    }

    [Fact]
    public void Roundness_OfALimacon_IsNone()
    {
        var degrees = Profiles.Degrees(97);
        double[] heights = [.. degrees.Select(a => 0.3 + 0.05 * Math.Cos((a - 20) * Math.PI / 180))];

        Assert.All(RoundnessMethod.OfTurn(degrees, heights).All(), circle => Assert.Equal(0, circle.PeakToValley.Millimetres, 1e-15));
    }

    // Half axes a and b: circles of a outside and b inside, a − b apart, all about the ellipse's centre.
    [Theory]
    [InlineData(20, 19.99)]
    [InlineData(20, 15)]
    public void Circles_OfAnEllipse_AreOnItsAxes(double a, double b)
    {
        double[] angles = [.. Profiles.Degrees(360).Select(degrees => degrees * Math.PI / 180)];
        var result = Profiles.Round([.. angles.Select(t => a * Math.Cos(t))], [.. angles.Select(t => b * Math.Sin(t))]);

        Assert.All(result.All().Take(3), circle => Assert.Equal(a - b, circle.PeakToValley.Millimetres, 1e-11));
        Assert.Equal(a, result.MinimumCircumscribed!.Radius.Millimetres, 1e-11);
        Assert.InRange(result.MaximumInscribed!.Radius.Millimetres, b, b * (1 + 2e-5));   // it has room between two samples to move aside
        Assert.Equal([0, 180], result.MinimumZone!.Outer.Select(point => point.Index!.Value));
        Assert.Equal([90, 270], result.MinimumZone.Inner.Select(point => point.Index!.Value));
    }
}
