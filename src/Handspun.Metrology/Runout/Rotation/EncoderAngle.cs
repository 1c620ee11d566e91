namespace Handspun.Metrology.Runout.Rotation;

/// <summary>The angle from an encoder's own angles.</summary>
internal static class EncoderAngle
{
    /// <summary>The encoder's angles in turns, whole turns counted, in the direction in which the shaft mostly turned.</summary>
    public static double[] Unwrap(ReadOnlySpan<double> degrees)
    {
        var turns = new double[degrees.Length];
        var added = 0.0;
        for (var i = 0; i < turns.Length; i++)
        {
            if (i > 0)
            {
                var step = (degrees[i] - degrees[i - 1]) / 360;
                // A jump of more than half a turn between neighbours is the encoder's zero going by, unless it counts whole turns itself.
                added -= Math.Abs(step) is > 0.5 and <= 1 ? Math.Sign(step) : 0;
            }

            turns[i] = degrees[i] / 360 + added;
        }

        if (turns.Length > 1 && turns[^1] < turns[0])
        {
            for (var i = 0; i < turns.Length; i++)
            {
                turns[i] = -turns[i];
            }
        }

        return turns;
    }

    /// <summary>The value at a moment on the straight line between the two nearest points; the end value outside.</summary>
    public static double Between(ReadOnlySpan<double> seconds, ReadOnlySpan<double> values, double at)
    {
        var after = seconds.BinarySearch(at);
        if (after >= 0)
        {
            return values[after];
        }

        after = ~after;
        if (after == 0)
        {
            return values[0];
        }

        if (after == seconds.Length)
        {
            return values[^1];
        }

        var length = seconds[after] - seconds[after - 1];
        return values[after - 1] + (values[after] - values[after - 1]) * (at - seconds[after - 1]) / length;
    }
}
