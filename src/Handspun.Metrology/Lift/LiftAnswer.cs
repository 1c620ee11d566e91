using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Lift;

/// <summary>Puts what was found into a result.</summary>
internal static class LiftAnswer
{
    private const double MiddleBelowMillimetres = 1.27;
    private const double MiddleBelowShare = 0.3;
    private const double RunsOutMillimetres = 0.05;
    private const double ManyRejectedShare = 0.05;
    private const double LopsidedDegrees = 1;
    private const double OnceATurnWidening = 1.7;   // found by simulation

    /// <summary>The answer where lobe and base circle were found.</summary>
    public static LiftResult Of(
        RotationCapture capture, GaugeTraits gauge, LiftSettings settings, Trace trace, LiftFit fit, BaseCircle circle, double highest, AngleBasis basis)
    {
        var nose = LobeNose.Find(fit, trace, circle, highest);
        nose = basis.IsOnceATurn ? nose with { Doubt = OnceATurnWidening * nose.Doubt } : nose;
        var result = new LiftResult
        {
            Status = LiftStatus.NotOpened,
            Readings = capture.Seconds.Length,
            CamTurns = fit.TurnsSeen,
            AngleOf = basis.Shaft,
            Reference = basis.Told.Reference,
            ZeroTold = basis.Told.ZeroTold,
            CheckingLift = settings.CheckingLift,
            LobeLift = LobeLift(nose, gauge),
            BaseCircleRunout = Of(circle.Runout, Budget(circle.Runout, circle.RunoutDoubt, gauge).Expanded.Millimetres / 2),
            AngleDegrees = Angles(capture, trace, fit),
            CurveMillimetres = [.. Enumerable.Range(0, 360).Select(degree => fit.At(degree / 360.0).Height - circle.At(degree / 360.0).Height)],
            Rejected = trace.LeftOutBy(fit.Weights),
        };
        result = result with { ValveLift = ValveLift(result.LobeLift!.Value, settings) };
        var gaugeDoubt = Budget(0, Math.Sqrt(circle.At(highest).Variance), gauge).Expanded.Millimetres / 2;
        var below = Math.Min(MiddleBelowMillimetres, MiddleBelowShare * nose.Lift);
        if (settings.CheckingLift.Millimetres >= nose.Lift
            || LobeFlanks.Find(fit, circle, nose.Turns, nose.Lift - below, gaugeDoubt) is not { } upper
            || LobeFlanks.Find(fit, circle, nose.Turns, settings.CheckingLift.Millimetres, gaugeDoubt) is not { } lower)
        {
            return result with
            {
                Missing = $"The lobe lifts {nose.Lift:0.000} mm and does not clearly pass the checking lift of {settings.CheckingLift.Millimetres:0.000} mm: check the unit and the plunger's travel, or choose a lower checking lift.",
            };
        }

        var (hand, zero) = (basis.HandVariance(fit.Unevenness(trace.Seconds)), basis.ZeroVariance);
        var turn = Math.Floor(upper.Middle);
        return result with
        {
            Status = LiftStatus.Measured,
            Centreline = Angle(upper.Middle - turn, upper.MiddleVariance + hand / 2 + zero),
            Opening = Angle(lower.Opening - turn, lower.OpeningVariance + hand + zero),
            Closing = Angle(lower.Closing - turn, lower.ClosingVariance + hand + zero),
            Duration = Angle(lower.Closing - lower.Opening, lower.DurationVariance + 2 * hand),
            Warnings = [.. Warnings(trace, fit, circle, basis, nose, upper)],
        };
    }

    private static IEnumerable<LiftWarning> Warnings(Trace trace, LiftFit fit, BaseCircle circle, AngleBasis basis, LobeNose nose, LobeFlanks upper)
    {
        var leftOut = trace.Rejected.Count + fit.Weights.Count(weight => weight == 0);
        (LiftWarning Warning, bool When)[] all =
        [
            (LiftWarning.OneTurnOnly, fit.TurnsSeen < 1.9),
            (LiftWarning.AngleSeldomTold, basis.IsSeldom),
            (LiftWarning.AngleByHand, basis.Told.Reference == AngleReference.Mark),
            (LiftWarning.ZeroNotTold, !basis.Told.ZeroTold),
            (LiftWarning.ShaftAssumed, basis.Assumed),
            (LiftWarning.BaseCircleRunsOut, circle.Runout - 2 * circle.RunoutDoubt > RunsOutMillimetres),
            (LiftWarning.ManyRejected, leftOut > ManyRejectedShare * trace.Seconds.Length),
            (LiftWarning.LopsidedLobe, Math.Abs(nose.Turns - upper.Middle) * 360 > LopsidedDegrees + 4 * 360 * Math.Sqrt(Math.Max(0, upper.MiddleVariance))),
        ];
        return all.Where(one => one.When).Select(one => one.Warning);
    }

    private static Measured<Length> LobeLift(LobeNose nose, GaugeTraits gauge) =>
        Of(nose.Lift, Budget(nose.Lift, nose.Doubt, gauge).Expanded.Millimetres / 2);

    // Both inputs are independent: relative variances add (JCGM 100:2008, 5.1.6).
    private static Measured<Length>? ValveLift(Measured<Length> lobe, LiftSettings settings)
    {
        if (settings.RockerRatio is not { } ratio)
        {
            return null;
        }

        var u95 = Math.Sqrt(Math.Pow(ratio * lobe.U95.Millimetres, 2) + Math.Pow(lobe.Value.Millimetres * settings.RockerRatioU95, 2));
        return new(Length.FromMillimetres(ratio * lobe.Value.Millimetres), Length.FromMillimetres(u95));
    }

    // The rounding is in what the fits leave in doubt: both take each reading as the step that it fell in.
    private static RunoutBudget Budget(double movement, double fit, GaugeTraits gauge) => new(fit, 0, gauge.ErrorDoubt, gauge.LeanDoubt(movement));

    private static Measured<Length> Of(double millimetres, double standard) => new(Length.FromMillimetres(millimetres), Length.FromMillimetres(2 * standard));

    private static Measured<CamAngle> Angle(double turns, double variance) =>
        new(CamAngle.FromDegrees(360 * turns), CamAngle.FromDegrees(2 * 360 * Math.Sqrt(Math.Max(0, variance))));

    private static double[] Angles(RotationCapture capture, Trace trace, LiftFit fit)
    {
        var angles = new double[capture.Seconds.Length];
        Array.Fill(angles, double.NaN);
        for (var i = 0; i < trace.Places.Length; i++)
        {
            angles[trace.Places[i]] = 360 * fit.Turns[i];
        }

        return angles;
    }
}
