using CsCheck;
using Handspun.Accuracy;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Runout;

/// <summary>What must not matter to a runout. A change may send the search another way, so equal means within a share of the uncertainty.</summary>
public class RunoutPropertyTests
{
    private const int Samples = 16;
    private static readonly Gen<int> Seed = Gen.Int[0, 10_000];

    [Fact]
    public void Runout_WithTheDialSetElsewhere_IsTheSame() => Gen.Select(Seed, Gen.Double[-5, 5]).Each(
        Samples,
        (seed, offset) => Agree(Capture(seed), Change(Capture(seed), value => value + offset)));

    [Fact]
    public void Runout_WithThePlungerTheOtherWay_IsTheSame() => Seed.Each(
        Samples,
        seed => Agree(Capture(seed), Change(Capture(seed), value => -value)));

    [Fact]
    public void Runout_OfTheCapturePlayedBackwards_IsTheSame() => Seed.Each(
        Samples,
        seed =>
        {
            var capture = Capture(seed);
            var seconds = capture.Seconds.ToArray();
            Agree(capture, capture with
            {
                Seconds = seconds.Select(at => seconds[^1] - at).Reverse().ToArray(),
                Millimetres = capture.Millimetres.ToArray().Reverse().ToArray(),
            });
        });

    [Fact]
    public void Runout_WithTheClockStartedElsewhere_IsTheSame() => Gen.Select(Seed, Gen.Double[-1000, 1000]).Each(
        Samples,
        (seed, offset) =>
        {
            var capture = Capture(seed);
            Agree(capture, capture with { Seconds = capture.Seconds.ToArray().Select(at => at + offset).ToArray() });
        });

    // Everything a thousand times as large, the gauge's step too, is the same shaft in another unit.
    [Fact]
    public void Runout_InAnotherUnit_IsInThatUnit() => Gen.Select(Seed, Gen.Double[0.2, 20]).Each(
        Samples,
        (seed, scale) =>
        {
            var plain = Captures.Measure(Capture(seed));
            var scaled = Captures.Measure(
                Change(Capture(seed), value => value * scale), Captures.Fine with { Resolution = Length.FromMillimetres(0.001 * scale) });
            Assert.Equal(scale, scaled.Tir!.Value.Millimetres / plain.Tir!.Value.Millimetres, scale * Allowed(plain) / plain.Tir.Value.Millimetres);
        });

    // The same shaft with the index at another place: the runout stays, the high spot goes round with the index.
    [Fact]
    public void HighSpot_WithTheEncoderSetElsewhere_GoesRoundWithIt() => Gen.Select(Seed, Gen.Double[0, 360]).Each(
        Samples,
        (seed, shift) =>
        {
            var capture = Captures.Usual(seed, new AngleAid { EncoderSteps = 3600 }).ToCapture();
            var plain = Captures.Measure(capture);
            var turned = Captures.Measure(capture with { EncoderDegrees = capture.EncoderDegrees.ToArray().Select(a => a + shift).ToArray() });
            Assert.Equal(plain.Tir!.Value.Millimetres, turned.Tir!.Value.Millimetres, 1e-9);
            Assert.Equal(plain.Roundness!.Value.Millimetres, turned.Roundness!.Value.Millimetres, 1e-9);
            var off = turned.HighSpot!.Value.Degrees - plain.HighSpot!.Value.Degrees - shift;
            Assert.Equal(0, off - 360 * Math.Round(off / 360), 1e-4);
        });

    private static RotationCapture Capture(int seed) => Captures.Usual(seed).ToCapture();

    private static RotationCapture Change(RotationCapture capture, Func<double, double> change) =>
        capture with { Millimetres = capture.Millimetres.ToArray().Select(change).ToArray() };

    private static void Agree(RotationCapture one, RotationCapture other)
    {
        var (left, right) = (Captures.Measure(one), Captures.Measure(other));
        Assert.Equal(left.Tir!.Value.Millimetres, right.Tir!.Value.Millimetres, Allowed(left));
    }

    private static double Allowed(RunoutResult result) => 1.5 * result.TirU95!.Value.Millimetres + 0.0002;
}
