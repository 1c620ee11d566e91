using Handspun.Jobs.Lengths;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.Tests.Runout;

public sealed class TraceTests
{
    [Fact]
    public void Turns_OverTime_EndWhereTheAngleHasGoneRound()
    {
        var trace = Trace.Of(SteadyTurning(from: 0));
        Assert.Equal([1, 2, 3], trace.Turns.Select(turn => turn.Number));
        Assert.Equal(0, trace.Turns[0].From, 1e-9);
        Assert.Equal(3.6, trace.Turns[0].To, 1e-9);   // 100 degrees a second
        Assert.Equal(7.2, trace.Turns[1].To, 1e-9);
        Assert.Equal(9.9, trace.Turns[2].To, 1e-9);
    }

    [Fact]
    public void Turns_OverTimeAndOverTheAngle_BearTheSameNumbers()
    {
        var content = SteadyTurning(from: -90);   // the index came a quarter turn after the first reading
        Assert.Equal([1, 2, 3, 4], Trace.Of(content).Turns.Select(turn => turn.Number));
        var overlaid = TurnedProfile.Of(content).Turns;
        Assert.Equal([1, 2, 3, 4], overlaid.Select(turn => turn.Number));
        Assert.Equal(270, overlaid[0].Points[0].X, 1e-9);
    }

    [Fact]
    public void Fit_WhereTheAngleIsNotKnown_IsBroken()
    {
        var content = SteadyTurning(from: 0);
        var angles = content.Result.AngleDegrees.ToArray();
        angles[50] = double.NaN;
        var fitted = Trace.Of(content with { Result = content.Result with { AngleDegrees = angles } }).Fitted;
        Assert.Equal(2, fitted.Count);
        Assert.True(fitted[0][^1].X < 5.0 && fitted[1][0].X > 5.0);
    }

    [Fact]
    public void Fit_OfReadingsWithoutNoise_GoesThroughThem()
    {
        var content = SteadyTurning(from: 0) with { Unit = LengthUnit.Millimetre };
        var fitted = Trace.Of(content).Fitted.Single().ToLookup(at => Math.Round(at.X, 9), at => at.Y);
        for (var i = 0; i < content.Seconds.Length - 1; i++)
        {
            Assert.Equal(content.Millimetres.Span[i], fitted[Math.Round(content.Seconds.Span[i], 9)].First(), 1e-9);
        }
    }

    [Fact]
    public void Heights_AboveTheLowSpot_ReachTheRunoutAtTheHighSpot()
    {
        var content = new InventedRecord { Unit = LengthUnit.Millimetre }.Content();
        var profile = TurnedProfile.Of(content);
        Assert.Equal(0, profile.Low.Y, 1e-12);
        Assert.Equal(content.Result.Tir!.Value.Millimetres, profile.High.Y, 1e-6);
        Assert.Equal(content.Result.Tir!.Value.Millimetres, profile.Curve.Max(at => at.Y), 1e-5);
    }

    [Fact]
    public void Readings_ThatWereLeftOut_AreInNoTurn()
    {
        var content = new InventedRecord { Knocks = [(0.5, 0.4)] }.Content();
        var left = content.Result.Rejected.Count;
        Assert.Equal(content.Seconds.Length - left, TurnedProfile.Of(content).Turns.Sum(turn => turn.Points.Count));
        Assert.Equal(left, Trace.Of(content).LeftOut.Count);
        Assert.Single(Trace.Of(content).LeftOut, reading => reading.Reason == RejectionReason.Knock);
    }

    private static RunoutPictureContent SteadyTurning(double from)
    {
        var content = new InventedRecord().Content();
        var profile = content.Result.Profile!;
        var seconds = Enumerable.Range(0, 100).Select(i => i * 0.1).ToArray();
        var angles = seconds.Select(at => from + 100 * at).ToArray();
        return content with
        {
            Seconds = seconds,
            Millimetres = angles.Select(profile.At).ToArray(),
            Result = content.Result with { AngleDegrees = angles, DriftMillimetres = [], Rejected = [] },
        };
    }
}
