using CsCheck;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Runout;

/// <summary>Whatever the numbers are, there is an answer and it is sound in itself.</summary>
public class RunoutFuzzTests
{
    private static readonly double[] OddOnes =
        [0, -0.0, 1, -1, 1e-300, 1e9, -1e9, 1e300, -1e300, double.MaxValue, double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    private static readonly Gen<double> Odd = Gen.Int[0, OddOnes.Length - 1].Select(i => OddOnes[i]);

    private static readonly Gen<double[]> Anything =
        Gen.Frequency((8, Gen.Double[-1, 1]), (1, Gen.Const(0.25)), (1, Odd)).Array[0, 60];

    // Steps of a few digits up or down, with stretches that stand.
    private static readonly Gen<double[]> Wandering = Gen.Frequency((3, Gen.Int[-4, 4]), (2, Gen.Const(0)), (1, Gen.Int[-200, 200]))
        .Array[8, 400].Select(steps =>
        {
            var at = 0;
            return Array.ConvertAll(steps, step => 0.001 * (at += step));
        });

    // Times that go on by nothing, a little or a lot.
    private static readonly Gen<double[]> Times = Gen.Frequency((2, Gen.Const(0.0)), (6, Gen.Double[0, 0.05]), (1, Gen.Double[0, 5]))
        .Array[8, 400].Select(steps =>
        {
            var at = 0.0;
            return Array.ConvertAll(steps, step => at += step);
        });

    [Fact]
    public void Capture_OfAnyNumbers_IsAnswered() => Gen.Select(Anything, Anything, Anything, Anything).Each(
        3000,
        (seconds, millimetres, index, encoder) => IsSound(new()
        {
            Seconds = seconds,
            Millimetres = millimetres,
            IndexSeconds = index,
            EncoderSeconds = encoder,
            EncoderDegrees = millimetres,
        }));

    [Fact]
    public void Capture_OfWanderingReadings_IsAnswered() => Gen.Select(Times, Wandering, Times, Gen.Int[0, 3]).Each(
        400,
        (seconds, millimetres, others, aid) =>
        {
            var count = Math.Min(seconds.Length, millimetres.Length);
            IsSound(new()
            {
                Seconds = seconds.AsMemory(0, count),
                Millimetres = millimetres.AsMemory(0, count),
                IndexSeconds = aid == 1 ? others : [],
                MarkSeconds = aid == 2 ? others : [],
                EncoderSeconds = aid == 3 ? seconds.AsMemory(0, count) : ReadOnlyMemory<double>.Empty,
                EncoderDegrees = aid == 3 ? millimetres.AsMemory(0, count).ToArray().Select(value => 1000 * value).ToArray() : [],
            });
        });

    private static void IsSound(RotationCapture capture)
    {
        var result = RunoutMethod.Measure(capture, new GaugeTraits(), new RunoutSettings());
        Assert.Equal(capture.Millimetres.Length, result.Readings);
        Assert.True(double.IsFinite(result.Turns) && result.Turns >= 0);
        Assert.True(double.IsFinite(result.TurnsPerSecond) && result.TurnsPerSecond >= 0);
        Assert.Equal(result.Status == RunoutStatus.Measured, result.Missing is null);
        if (result.Status == RunoutStatus.Measured)
        {
            Assert.True(result.Tir >= Length.Zero);
            Assert.True(result.TirU95 >= Length.Zero);
            Assert.Equal(capture.Seconds.Length, result.AngleDegrees.Count);
            Assert.Equal(result.Warnings.Distinct(), result.Warnings);
            Assert.Equal(result.Rejected.Select(left => left.Reading).Distinct().Count(), result.Rejected.Count);
        }
        else
        {
            Assert.Null(result.Tir);
        }
    }
}
