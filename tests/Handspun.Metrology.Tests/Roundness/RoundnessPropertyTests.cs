using CsCheck;
using Handspun.Metrology.Roundness;

namespace Handspun.Metrology.Tests.Roundness;

/// <summary>What must not matter to a roundness, and what must hold between the circles.</summary>
public class RoundnessPropertyTests
{
    private const double Tolerance = 1e-9;

    // An odd count: a circle inside that rests on two points across from each other has its centre along that line by rounding alone.
    [Fact]
    public void Roundness_OfPointsMovedTurnedAndScaled_MovesAndScalesWithThem() =>
        Gen.Select(Profiles.Seed, Gen.Int[2, 45].Select(half => 2 * half + 1), Gen.Double[0, 7], Gen.Double[-50, 50], Gen.Double[0.1, 10]).Sample(
            (seed, count, turn, move, scale) =>
            {
                var (x, y) = Profiles.Points(Profiles.Degrees(count), Profiles.Deviations(seed, count));
                var (s, c) = Math.SinCos(turn);
                double[] u = [.. x.Zip(y, (a, b) => scale * (c * a - s * b) + move)];
                double[] v = [.. x.Zip(y, (a, b) => scale * (s * a + c * b) - 2 * move)];
                Assert.All(Profiles.Round(x, y).All().Zip(Profiles.Round(u, v).All()), pair =>
                {
                    var (plain, moved) = pair;
                    Assert.Equal(scale * plain.PeakToValley.Millimetres, moved.PeakToValley.Millimetres, scale * Tolerance);
                    Assert.Equal(scale * plain.Radius.Millimetres, moved.Radius.Millimetres, scale * Tolerance);
                    Assert.Equal(
                        scale * (c * plain.CentreX.Millimetres - s * plain.CentreY.Millimetres) + move, moved.CentreX.Millimetres, scale * Tolerance);
                });
            },
            iter: 200);

    [Fact]
    public void Roundness_OfATurnOffsetOffCentreAndTurned_IsTheSame() =>
        Gen.Select(Profiles.Seed, Gen.Int[5, 90], Gen.Double[-360, 360], Gen.Double[-1, 1], Gen.Double[-0.2, 0.2]).Sample(
            (seed, count, turn, offset, off) =>
            {
                var (degrees, heights) = (Profiles.Degrees(count), Profiles.Deviations(seed, count));
                double[] turned = [.. degrees.Select(a => a + turn)];
                double[] moved = [.. heights.Zip(turned, (h, a) => h + offset + off * Math.Cos(a * Math.PI / 180))];
                Assert.All(
                    RoundnessMethod.OfTurn(degrees, heights).All().Zip(RoundnessMethod.OfTurn(turned, moved).All()),
                    pair => Assert.Equal(pair.First.PeakToValley.Millimetres, pair.Second.PeakToValley.Millimetres, 1e-12));
            },
            iter: 300);

    // Seen from inside, a profile's outside is its inside.
    [Fact]
    public void Circles_OfATurnUpsideDown_ChangePlaces() => Gen.Select(Profiles.Seed, Gen.Int[5, 90]).Sample(
        (seed, count) =>
        {
            var (degrees, heights) = (Profiles.Degrees(count), Profiles.Deviations(seed, count));
            var (plain, turned) = (RoundnessMethod.OfTurn(degrees, heights), RoundnessMethod.OfTurn(degrees, [.. heights.Select(h => -h)]));
            Assert.Equal(plain.MaximumInscribed!.Radius.Millimetres, -turned.MinimumCircumscribed!.Radius.Millimetres, 1e-13);
            Assert.Equal(plain.MinimumZone!.PeakToValley.Millimetres, turned.MinimumZone!.PeakToValley.Millimetres, 1e-13);
        },
        iter: 300);

    [Fact]
    public void MinimumZone_OfAnyProfile_IsTheLeastOfAllAndHoldsEveryPoint() => Gen.Select(Profiles.Seed, Gen.Int[5, 200]).Sample(
        (seed, count) =>
        {
            var (degrees, heights) = (Profiles.Degrees(count), Profiles.Deviations(seed, count));
            var (x, y) = Profiles.Points(degrees, heights);
            foreach (var result in new[] { Profiles.Round(x, y), RoundnessMethod.OfTurn(degrees, heights) })
            {
                Assert.All(result.All(), circle => Assert.True(result.MinimumZone!.PeakToValley.Millimetres <= circle.PeakToValley.Millimetres + 1e-12));
                Assert.True(result.MaximumInscribed!.Radius < result.LeastSquares!.Radius && result.LeastSquares.Radius < result.MinimumCircumscribed!.Radius);
                Assert.Equal(0, result.MinimumCircumscribed.Peak.Millimetres, 1e-12);
                Assert.Equal(0, result.MaximumInscribed.Valley.Millimetres, 1e-12);
                Assert.Equal(4, result.MinimumZone!.Outer.Count + result.MinimumZone.Inner.Count);
            }
        },
        iter: 100);

    // The best of all centres that four points can hold (two outside and two inside, three and one, one and three), by trying every one.
    [Fact]
    public void MinimumZone_OfAFewStrayPoints_IsTheBestOfEveryPossibleCentre() => Gen.Select(Profiles.Seed, Gen.Int[4, 8], Gen.Double[0.01, 8]).Sample(
        (seed, count, size) =>
        {
            var (x, y) = Profiles.Points(Profiles.Degrees(count), Profiles.Deviations(seed, count, size));
            Assert.Equal(EveryCentre.LeastZone(x, y), Profiles.Round(x, y).MinimumZone!.PeakToValley.Millimetres, 1e-9);
        },
        iter: 200);

    // By indicator and by coordinates alike, as far as the limaçon goes.
    [Fact]
    public void Circles_ByIndicatorAndByCoordinates_Agree() => Gen.Select(Profiles.Seed, Gen.Int[5, 90]).Sample(
        (seed, count) =>
        {
            const double limacon = 5e-6;   // e²/2R of a centre 0.014 mm off
            var (degrees, heights) = (Profiles.Degrees(count), Profiles.Deviations(seed, count));
            var (x, y) = Profiles.Points(degrees, heights);
            var (turn, plane) = (RoundnessMethod.OfTurn(degrees, heights), Profiles.Round(x, y));
            Assert.All(turn.All().Zip(plane.All()), pair =>
                Assert.Equal(Profiles.Radius + pair.First.Radius.Millimetres, pair.Second.Radius.Millimetres, limacon));
            Assert.Equal(turn.LeastSquares!.PeakToValley.Millimetres, plane.LeastSquares!.PeakToValley.Millimetres, limacon);
            Assert.Equal(turn.MinimumZone!.PeakToValley.Millimetres, plane.MinimumZone!.PeakToValley.Millimetres, limacon);
        },
        iter: 200);
}
