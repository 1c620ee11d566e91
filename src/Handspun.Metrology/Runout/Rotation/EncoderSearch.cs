using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>The profile where an encoder told the angle.</summary>
internal static class EncoderSearch
{
    private const int MostHarmonics = 8;

    /// <summary>Fits orders one after the other and keeps the best.</summary>
    public static AngleFound Find(Trace trace, RotationCapture capture)
    {
        var times = capture.EncoderSeconds.ToArray();
        var angles = EncoderAngle.Unwrap(capture.EncoderDegrees.Span);
        double TurnsAt(double seconds) => EncoderAngle.Between(times, angles, seconds);

        double[] turns = [.. trace.Seconds.Select(TurnsAt)];
        var seen = turns[^1] - turns[0];
        if (seen < RunoutAnswer.FewestTurns)
        {
            return new(null, Math.Max(0, seen));
        }

        var course = trace.Courses();
        var floor = Math.Max(0.2 * trace.Resolution, 1e-6);
        var most = (int)Math.Clamp(turns.Length / seen / 3, 1, MostHarmonics);
        KnownAngleFit? best = null;
        for (var drift = 0; drift <= (seen < 1.5 ? 0 : 2); drift++)
        {
            for (var harmonics = 1; harmonics <= most; harmonics++)
            {
                var fit = new KnownAngleFit(turns, trace.Millimetres, course, harmonics, drift, floor);
                best = best is null || fit.Criterion < best.Criterion ? fit : best;
            }
        }

        var rounding = new RoundingSums(best!.Series.Length, trace.Resolution, best.Sigma * best.Sigma);
        var (covariance, rounded) = best.Covariance(rounding);
        return new(
            new ProfileFit
            {
                Harmonics = best.Harmonics,
                Series = best.Series,
                Covariance = covariance,
                Rounding = rounded,
                TurnsAt = TurnsAt,
                End = trace.Seconds[^1],
                Turns = turns,
                Residuals = best.Residuals,
                Weights = best.Weights,
                Sigma = best.Sigma,
            },
            seen);
    }
}
