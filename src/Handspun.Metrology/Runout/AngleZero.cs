namespace Handspun.Metrology.Runout;

/// <summary>Where zero degrees is, in the fit's own turns.</summary>
internal static class AngleZero
{
    /// <summary>The best reference there is: encoder, index, mark, first reading.</summary>
    public static (AngleReference Reference, double Turns) Of(RotationCapture capture, ProfileFit fit)
    {
        if (capture.EncoderSeconds.Length > 1)
        {
            return (AngleReference.Encoder, 0);
        }

        if (capture.IndexSeconds.Length > 0)
        {
            return (AngleReference.Index, 0);
        }

        if (capture.MarkSeconds.Length > 0)
        {
            return (AngleReference.Mark, Mean(capture.MarkSeconds.Span, fit));
        }

        return (AngleReference.FirstReading, fit.Turns[0]);
    }

    // The mean direction of all marks (early and late calls even out).
    private static double Mean(ReadOnlySpan<double> marks, ProfileFit fit)
    {
        var (sines, cosines) = (0.0, 0.0);
        foreach (var mark in marks)
        {
            var (s, c) = Math.SinCos(2 * Math.PI * fit.TurnsAt(mark));
            (sines, cosines) = (sines + s, cosines + c);
        }

        return Math.Atan2(sines, cosines) / (2 * Math.PI);
    }
}
