using Handspun.Metrology.Bore;
using Handspun.Simulation;
using Handspun.Simulation.Rock;

namespace Handspun.Metrology.Tests.Bore;

public class BoreMethodTests
{
    // Closed form: a two-point gauge spans diameter / cos(lean), so its least reading is the diameter.
    [Theory]
    [InlineData(0.0134, 0.0001, 2e-5)]
    [InlineData(-0.0271, 0.001, 3e-4)]
    [InlineData(0.0038, 0.01, 1.5e-3)]
    public void Deviation_OfACosineRock_IsTheLeastReading(double shown, double step, double tolerance)
    {
        var result = RockedBores.Measure(RockedBores.Of(shown, swings: 8, step: step), step);

        Assert.Equal(BoreStatus.Measured, result.Status);
        Assert.Equal(shown, result.Deviation!.Value.Millimetres, tolerance);
        Assert.True(Math.Abs(result.Deviation.Value.Millimetres - shown) <= result.DeviationU95!.Value.Millimetres);
        Assert.Equal(8, result.Passes);
        Assert.True(result.HasEnough);
        Assert.Equal([BoreWarning.NoSetting], result.Warnings);
        Assert.Null(result.Size);
    }

    [Fact]
    public void Size_FromASettingRing_IsTheRingAndTheDifference()
    {
        var result = RockedBores.Measure(RockedBores.Of(0.0215, swings: 8), settings: new BoreSettings { Setting = RockedBores.Ring(21.4, shown: 0.002) });

        Assert.Equal(0.0195, result.Deviation!.Value.Millimetres, 3e-4);
        Assert.Equal(21.4195, result.Size!.Value.Millimetres, 3e-4);
        Assert.Equal(0.0006, result.Budget!.Value.Size, 1e-12);
        Assert.Equal(
            Math.Sqrt(Math.Pow(result.DeviationU95!.Value.Millimetres, 2) + 0.0012 * 0.0012), result.SizeU95!.Value.Millimetres, 1e-9);   // JCGM 100:2008, 5.1.2
        Assert.Equal(0.001 / Math.Sqrt(12), result.Budget.Value.Shown, 1e-12);   // JCGM 100:2008, F.2.2.1
        Assert.Empty(result.Warnings);
    }

    [Fact]
    public void Deviation_OfAGaugeThatReadsTheOtherWay_HasItsSignTurned()
    {
        var (seconds, millimetres) = RockedBores.Of(0.0215, swings: 8);
        double[] turned = [.. millimetres.Select(value => -value)];

        var result = RockedBores.Measure((seconds, turned), settings: new BoreSettings { LargerReadsHigher = false, Setting = RockedBores.Ring(21.4, shown: -0.002) });

        Assert.Equal(0.0195, result.Deviation!.Value.Millimetres, 3e-4);
        Assert.All(result.ByPass, pass => Assert.Equal(-0.0215, pass.Millimetres, 1e-3));
    }

    [Fact]
    public void Bore_OfARockThatTurnsBackEarlyOnce_LeavesThatOut()
    {
        var (seconds, millimetres) = RockedBores.Of(0.01, swings: 8);

        // The lean goes from one side almost to the middle and back to the same side.
        var (later, more) = RockedBores.Of(0.01, swings: 8, lean: 1.5, centre: 4.5);
        double[] joinedTimes = [.. seconds, .. later.Take(81).Select(time => time + seconds[^1] + 0.025)];
        var result = RockedBores.Measure((joinedTimes, [.. millimetres, .. more.Take(81)]));

        Assert.Equal(0.01, result.Deviation!.Value.Millimetres, 5e-4);
        Assert.Equal(8, result.Passes);
    }

    [Fact]
    public void Bore_WithKnocks_IsUnmoved()
    {
        var capture = RockedBores.Of(0.01, swings: 8);
        capture.Millimetres[61] -= 0.3;
        capture.Millimetres[200] += 0.2;

        Assert.Equal(0.01, RockedBores.Measure(capture).Deviation!.Value.Millimetres, 3e-4);
    }

    // Just outside the bore a two-point gauge shows a little more than it does inside: the way in is a few rocks high.
    [Fact]
    public void Bore_RockedUnevenlyRightAfterTheGaugeWasPutIn_IsWhatItIs()
    {
        for (var seed = 1; seed <= 12; seed++)
        {
            var capture = RockSimulation.Run(21.4, new RockHabits { Cycles = 4 }, new Indicator { RateHz = 50 }, bumps: 0, seed);
            double[] before = [.. Enumerable.Range(0, 65).Select(i => capture.TrueMillimetres + (i % 5 == 0 ? 0.851 : 0.85))];
            double[] seconds = [.. Enumerable.Range(0, 65).Select(i => i / 50.0), .. capture.Seconds.Select(time => 1.3 + time - capture.Seconds[0])];

            var result = RockedBores.Measure((seconds, [.. before, .. capture.Millimetres]));

            Assert.True(result.Passes >= 6, $"seed {seed}: {result.Passes} passes");
            Assert.Equal(capture.TrueMillimetres, result.Deviation!.Value.Millimetres, 0.003);
            Assert.True(result.DeviationU95!.Value.Millimetres < 0.006, $"seed {seed}: U {result.DeviationU95.Value.Millimetres}");
        }
    }

    [Fact]
    public void Bore_AfterTheGaugeWasElsewhere_IsUnmoved()
    {
        var (seconds, millimetres) = RockedBores.Of(0.01, swings: 8);
        double[] before = [.. Enumerable.Repeat(1.9, 50)];

        var result = RockedBores.Measure(([.. before.Select((_, i) => i / 40.0), .. seconds.Select(time => time + 1.25)], [.. before, .. millimetres]));

        Assert.Equal(0.01, result.Deviation!.Value.Millimetres, 5e-4);
        Assert.Equal(8, result.Passes);
        Assert.InRange(result.ByPass[0].Seconds, 1.65, 1.85);   // half a swing of one second after the start
    }

    [Theory]
    [InlineData(0.4, 6, 0, "No turning point")]
    [InlineData(8, 0, 0, "do not move")]
    [InlineData(1, 6, 0, "once only")]
    public void Rock_WithoutATurningPoint_SaysWhatToDo(double swings, double lean, double centre, string words)
    {
        var result = RockedBores.Measure(RockedBores.Of(0.01, swings, lean, centre: centre));

        Assert.Equal(BoreStatus.TooShort, result.Status);
        Assert.Contains(words, result.Missing, StringComparison.Ordinal);
        Assert.Null(result.Deviation);
    }

    [Fact]
    public void Rock_ThatTurnsBackAnywhere_IsNoTurningPoint()
    {
        // One side only, and turned back at another lean each time.
        double[] leans = [6, 2.0, 6, 3.4, 6, 1.2, 6, 4.0, 6, 2.9, 6];
        double[] degrees = [.. Enumerable.Range(0, 400).Select(i => leans[i / 40] + (leans[i / 40 + 1] - leans[i / 40]) * (1 - Math.Cos(Math.PI * (i % 40) / 40)) / 2)];
        double[] values = [.. degrees.Select(degree => 21.4 * (1 / Math.Cos(degree * Math.PI / 180) - 1))];

        var result = RockedBores.Measure(([.. values.Select((_, i) => i / 40.0)], values));

        Assert.Equal(BoreStatus.TooShort, result.Status);
        Assert.NotNull(result.Missing);
    }

    [Fact]
    public void Setting_TypedInInches_IsAskedFor()
    {
        var result = RockedBores.Measure(RockedBores.Of(0.01, swings: 8), settings: new BoreSettings { Setting = RockedBores.Ring(0.9) });

        Assert.Equal(BoreStatus.Rejected, result.Status);
        Assert.Contains("22.86 mm", result.Missing, StringComparison.Ordinal);   // 0.9 × 25.4
    }
}
