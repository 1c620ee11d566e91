namespace Handspun.Metrology.Runout;

/// <summary>How well it is known where zero degrees is, and whether it is at the same place of the shaft in the next capture.</summary>
internal static class ZeroDoubt
{
    /// <summary>From memory, no source: how far apart a person's calls of something that passes lie, as a standard deviation.</summary>
    public const double CallSeconds = 0.05;

    private const double LookSeconds = 0.1;

    /// <summary>Whether zero is where it was in an earlier capture: not at the first reading, and not at a pulse that comes at another place each time.</summary>
    public static bool Lasts(RotationCapture capture, AngleReference reference) => reference switch
    {
        AngleReference.FirstReading => false,
        AngleReference.Index => capture.TurnsPerIndex == 1,
        _ => true,
    };

    /// <summary>Standard uncertainty, in turns, of where the readings stand from zero as a whole (JCGM 100:2008, 4.2.3, 4.3.7).</summary>
    /// <remarks>
    /// An encoder shows the last step that was passed, and its zero is within one: a rectangle of a step to either side. A mark is
    /// as good as the hand that calls it, or as the calls agree, whichever is worse. Without an encoder the hand's rhythm comes to it.
    /// </remarks>
    public static double Turns(RotationCapture capture, AngleReference reference, ProfileFit fit, double zero, double rhythm) => reference switch
    {
        AngleReference.Encoder => Step(capture.EncoderDegrees.Span) / 360 / Math.Sqrt(3),
        AngleReference.Mark => Math.Sqrt(MarkVariance(capture.MarkSeconds.Span, fit, zero) + rhythm * rhythm),
        _ => rhythm,
    };

    private static double MarkVariance(ReadOnlySpan<double> marks, ProfileFit fit, double zero)
    {
        var (called, scattered) = (0.0, 0.0);
        foreach (var mark in marks)
        {
            var speed = Math.Abs(fit.TurnsAt(mark + LookSeconds) - fit.TurnsAt(mark - LookSeconds)) / (2 * LookSeconds);
            called += Math.Pow(CallSeconds * speed, 2);
            scattered += Math.Pow(Math.IEEERemainder(fit.TurnsAt(mark) - zero, 1), 2);
        }

        return Math.Max(called / marks.Length, marks.Length > 1 ? scattered / (marks.Length - 1) : 0) / marks.Length;
    }

    private static double Step(ReadOnlySpan<double> degrees)
    {
        var step = double.MaxValue;
        for (var i = 1; i < degrees.Length; i++)
        {
            var move = Math.Abs(degrees[i] - degrees[i - 1]);
            step = move > 1e-9 ? Math.Min(step, move) : step;
        }

        return step < 360 ? step : 0;
    }
}
