using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Rotation;

namespace Handspun.Metrology.Lift;

/// <summary>What told the angle, in turns of the shaft that it was told of.</summary>
/// <param name="Reference">What zero is.</param>
/// <param name="Anchors">Angles at moments, ascending; doubts are standard uncertainties in turns.</param>
/// <param name="ZeroDoubt">Standard uncertainty of zero itself, in turns.</param>
/// <param name="ZeroTold">Whether zero is the same place of the shaft in every capture.</param>
internal sealed record AngleTold(AngleReference Reference, IReadOnlyList<AngleAnchor> Anchors, double ZeroDoubt, bool ZeroTold = true)
{
    // A slot or a tooth is this true (from memory of what toothed discs and their sensors do): a fifth of a degree.
    private const double PulseDoubt = 0.2 / 360;
    private const double LongestBounceSeconds = 0.02;

    /// <summary>Angles told for each turn of the shaft.</summary>
    public double PerTurn => Anchors.Count < 2 ? 0 : (Anchors.Count - 1) / Math.Max(1e-9, Anchors[^1].Turns - Anchors[0].Turns);

    /// <summary>The best source that a valid capture has: encoder, index, marks; null where none told two angles or more.</summary>
    /// <param name="capture">The capture.</param>
    /// <param name="zeroAtMark">Whether zero is at the marks although pulses tell the angle.</param>
    public static AngleTold? Of(RotationCapture capture, bool zeroAtMark)
    {
        var told = capture.EncoderSeconds.Length > 1 ? OfEncoder(capture)
            : capture.IndexSeconds.Length > 1 ? OfIndex(capture, zeroAtMark)
            : OfMarks(capture);
        return told.Anchors.Count < 2 ? null : told;
    }

    /// <summary>The same with what the silence at both ends says: before the first pulse, and after the last, the shaft stood less than one pulse away.</summary>
    /// <param name="first">Time of the first reading.</param>
    /// <param name="last">Time of the last.</param>
    public AngleTold WithEnds(double first, double last)
    {
        const double tells = 0.25;
        var apart = 1 / PerTurn;
        if (apart > tells)
        {
            return this;   // less than a good part of a turn says little, and a call may be left out
        }

        List<AngleAnchor> anchors = [.. Anchors];
        var doubt = apart / Math.Sqrt(12);
        if (first < anchors[0].Seconds)
        {
            anchors.Insert(0, new(first, anchors[0].Turns - apart / 2, doubt));
        }

        if (last > anchors[^1].Seconds)
        {
            anchors.Add(new(last, anchors[^1].Turns + apart / 2, doubt));
        }

        return this with { Anchors = anchors };
    }

    // At each change of a counting encoder's value the shaft passed the border between two steps, some time between the two looks.
    private static AngleTold OfEncoder(RotationCapture capture)
    {
        var seconds = capture.EncoderSeconds.Span;
        var turns = EncoderAngle.Unwrap(capture.EncoderDegrees.Span);
        var step = StepOf(turns);
        List<AngleAnchor> anchors = [];
        for (var i = 1; i < turns.Length; i++)
        {
            var moved = turns[i] - turns[i - 1];
            if (!(moved > 0 && seconds[i] > seconds[i - 1]))
            {
                continue;
            }

            anchors.Add(step > 0
                ? new((seconds[i - 1] + seconds[i]) / 2, (turns[i - 1] + turns[i] + step) / 2, Math.Sqrt(step * step + moved * moved / 4) / Math.Sqrt(12))
                : new(seconds[i], turns[i], PulseDoubt));
        }

        return new(AngleReference.Encoder, anchors, step / Math.Sqrt(12));
    }

    // The step of an encoder that counts; 0 where it shows any angle. Steps show in that every movement is a whole number of the
    // least one, and not always the same number.
    private static double StepOf(double[] turns)
    {
        const double least = 1e-7;
        var (step, most, stands) = (double.PositiveInfinity, 0.0, false);
        for (var i = 1; i < turns.Length; i++)
        {
            var moved = Math.Abs(turns[i] - turns[i - 1]);
            (step, most, stands) = (moved > least ? Math.Min(step, moved) : step, Math.Max(most, moved), stands || moved <= least);
        }

        var whole = double.IsFinite(step) && (stands || most > 1.5 * step);
        for (var i = 1; i < turns.Length && whole; i++)
        {
            var steps = Math.Abs(turns[i] - turns[i - 1]) / step;
            whole = Math.Abs(steps - Math.Round(steps)) < 0.05;
        }

        return whole ? step : 0;
    }

    private static AngleTold OfIndex(RotationCapture capture, bool zeroAtMark)
    {
        var seconds = capture.IndexSeconds.Span;
        var even = (seconds[^1] - seconds[0]) / (seconds.Length - 1);
        var frame = FrameSeconds(capture);
        var doubt = Math.Sqrt(PulseDoubt * PulseDoubt + Math.Pow(frame * capture.TurnsPerIndex / Math.Max(1e-6, even), 2) / 12);
        var anchors = Count(seconds, capture.TurnsPerIndex, Math.Min(LongestBounceSeconds, even / 5), doubt).ConvertAll(anchor => anchor with { Seconds = anchor.Seconds - frame / 2 });
        if (capture.ZeroPulse is { } zero && zero >= 0 && zero < seconds.Length)
        {
            return new(AngleReference.Index, Shifted(anchors, TurnsAt(anchors, seconds[zero] - frame / 2)), 0);
        }

        if (zeroAtMark && capture.MarkSeconds.Length > 0 && anchors.Count > 1)
        {
            return AtMarks(anchors, capture.MarkSeconds.Span);
        }

        var onceATurn = Math.Round(capture.TurnsPerIndex) is >= 1 and var whole && Math.Abs(capture.TurnsPerIndex - whole) < 1e-6;
        return new(AngleReference.Index, anchors, 0, ZeroTold: onceATurn);
    }

    // Pulses that come with the readings, in the gauge's own frames, passed some time since the frame before. 0 where they come by themselves.
    private static double FrameSeconds(RotationCapture capture)
    {
        var readings = capture.Seconds.Span;
        const double same = 1e-6;
        var together = 0;
        foreach (var pulse in capture.IndexSeconds.Span)
        {
            var after = readings.BinarySearch(pulse - same);
            after = after < 0 ? ~after : after;
            together += after < readings.Length && readings[after] <= pulse + same ? 1 : 0;
        }

        return together > 0.9 * capture.IndexSeconds.Length ? (readings[^1] - readings[0]) / Math.Max(1, readings.Length - 1) : 0;
    }

    // The pulses say how far it turned, the calls where zero is; whole turns between calls are taken out, and their mean is better than one.
    private static AngleTold AtMarks(List<AngleAnchor> anchors, ReadOnlySpan<double> marks)
    {
        var first = TurnsAt(anchors, marks[0]);
        var off = 0.0;
        foreach (var mark in marks)
        {
            off += Math.IEEERemainder(TurnsAt(anchors, mark) - first, 1);
        }

        var speed = (anchors[^1].Turns - anchors[0].Turns) / Math.Max(1e-6, anchors[^1].Seconds - anchors[0].Seconds);
        return new(AngleReference.Mark, Shifted(anchors, first + off / marks.Length), Runout.ZeroDoubt.CallSeconds * speed / Math.Sqrt(marks.Length));
    }

    private static double TurnsAt(List<AngleAnchor> anchors, double seconds) => IndexStarts.Even([seconds], anchors)?.Turns[0] ?? anchors[0].Turns;

    private static AngleAnchor[] Shifted(IReadOnlyList<AngleAnchor> anchors, double zero) => [.. anchors.Select(anchor => anchor with { Turns = anchor.Turns - zero })];

    private static AngleTold OfMarks(RotationCapture capture)
    {
        var anchors = Count(capture.MarkSeconds.Span, 1, LongestBounceSeconds, Runout.ZeroDoubt.CallSeconds);
        if (anchors.Count < 2)
        {
            return new(AngleReference.Mark, anchors, 0);
        }

        var speed = (anchors[^1].Turns - anchors[0].Turns) / Math.Max(1e-6, anchors[^1].Seconds - anchors[0].Seconds);
        return new(AngleReference.Mark, [.. anchors.Select(anchor => anchor with { Doubt = Runout.ZeroDoubt.CallSeconds * speed })], 0);
    }

    private static List<AngleAnchor> Count(ReadOnlySpan<double> seconds, double turnsApart, double bounce, double doubt)
    {
        List<AngleAnchor> anchors = [];
        foreach (var time in seconds)
        {
            if (anchors.Count == 0 || time - anchors[^1].Seconds >= bounce)
            {
                anchors.Add(new(time, anchors.Count * turnsApart, doubt));
            }
        }

        return anchors;
    }
}
