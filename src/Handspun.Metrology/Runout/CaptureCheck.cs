namespace Handspun.Metrology.Runout;

/// <summary>Whether a capture holds numbers that can be measured at all.</summary>
internal static class CaptureCheck
{
    /// <summary>Readings below which nothing can be said.</summary>
    public const int FewestReadings = 8;

    /// <summary>What is wrong with a capture and what to do, in one sentence; null where nothing is.</summary>
    public static string? Fault(RotationCapture capture)
    {
        if (FaultOfReadings(capture.Seconds.Span, capture.Millimetres.Span) is { } readings)
        {
            return readings;
        }

        if (capture.EncoderSeconds.Length != capture.EncoderDegrees.Length)
        {
            return $"There are {capture.EncoderSeconds.Length} times for {capture.EncoderDegrees.Length} encoder angles: the file or the link is damaged; capture again.";
        }

        if (Series(capture.EncoderSeconds.Span, "encoder angle") is { } encoder)
        {
            return encoder;
        }

        if (FirstNotNumber(capture.EncoderDegrees.Span) is { } angle)
        {
            return $"Encoder angle {angle + 1} is not a number: check the encoder and capture again.";
        }

        if ((Series(capture.IndexSeconds.Span, "index pulse") ?? Series(capture.MarkSeconds.Span, "mark")) is { } pulses)
        {
            return pulses;
        }

        if (!(capture.TurnsPerIndex > 0) || !double.IsFinite(capture.TurnsPerIndex))
        {
            return "The shaft's turns from one index pulse to the next must be more than 0: correct the index setting.";
        }

        return capture.Seconds.Length < FewestReadings
            ? $"Only {capture.Seconds.Length} readings came in, and at least {FewestReadings} are needed: check the gauge's link and turn on."
            : null;
    }

    /// <summary>What is wrong with readings and their times, however few there are; null where nothing is.</summary>
    public static string? FaultOfReadings(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres)
    {
        if (seconds.Length != millimetres.Length)
        {
            return $"There are {seconds.Length} times for {millimetres.Length} readings: the file or the link is damaged; capture again.";
        }

        return Series(seconds, "reading")
            ?? (FirstNotNumber(millimetres) is { } bad ? $"Reading {bad + 1} is not a number: check the gauge's profile and capture again." : null);
    }

    private static string? Series(ReadOnlySpan<double> seconds, string what)
    {
        if (FirstNotNumber(seconds) is { } bad)
        {
            return $"The time of {what} {bad + 1} is not a number: capture again.";
        }

        for (var i = 1; i < seconds.Length; i++)
        {
            if (seconds[i] < seconds[i - 1])
            {
                return $"The time of {what} {i + 1} runs backwards: capture again.";
            }
        }

        return null;
    }

    private static int? FirstNotNumber(ReadOnlySpan<double> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                return i;
            }
        }

        return null;
    }
}
