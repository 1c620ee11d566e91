using Handspun.Jobs.Lengths;
using Handspun.Metrology.Runout;
using ScottPlot;

namespace Handspun.Pictures.Runout;

/// <summary>A reading that was left out, where it stands over time.</summary>
internal readonly record struct LeftOut(Coordinates At, RejectionReason Reason);

/// <summary>One turn on the axis of time.</summary>
/// <param name="Number">Which turn of the capture it is, from 1.</param>
/// <param name="From">When it began or the capture did, in seconds.</param>
/// <param name="To">When it ended or the capture did, in seconds.</param>
internal readonly record struct TurnSpan(int Number, double From, double To);

/// <summary>The readings of a record over time, in the unit shown.</summary>
/// <param name="Kept">Readings that the result rests on; all of them where there is no result.</param>
/// <param name="LeftOut">Readings that it does not rest on.</param>
/// <param name="Fitted">What the fitted profile says the gauge would have shown, in unbroken stretches; empty where there is none.</param>
/// <param name="Turns">Where the turns lie.</param>
internal sealed record Trace(
    IReadOnlyList<Coordinates> Kept,
    IReadOnlyList<LeftOut> LeftOut,
    IReadOnlyList<IReadOnlyList<Coordinates>> Fitted,
    IReadOnlyList<TurnSpan> Turns)
{
    private const int MostFittedPoints = 1200;

    public static Trace Of(RunoutPictureContent content)
    {
        var seconds = content.Seconds.Span;
        var millimetres = content.Millimetres.Span;
        var reasons = content.Result.Rejected.GroupBy(left => left.Reading).ToDictionary(same => same.Key, same => same.First().Reason);
        var kept = new List<Coordinates>(seconds.Length);
        var leftOut = new List<LeftOut>();
        for (var i = 0; i < seconds.Length; i++)
        {
            var at = new Coordinates(seconds[i], LengthText.InUnit(millimetres[i], content.Unit));
            if (!double.IsFinite(at.X) || !double.IsFinite(at.Y))
            {
                continue;
            }

            if (reasons.TryGetValue(i, out var reason))
            {
                leftOut.Add(new(at, reason));
            }
            else
            {
                kept.Add(at);
            }
        }

        return new(kept, leftOut, Fit(content), Spans(content));
    }

    // Between two readings the angle rises smoothly and the profile bends as it does: few readings a turn still give a smooth curve.
    private static List<List<Coordinates>> Fit(RunoutPictureContent content)
    {
        var fitted = new List<List<Coordinates>>();
        var seconds = content.Seconds.Span;
        var (angles, drifts) = (content.Result.AngleDegrees, content.Result.DriftMillimetres);
        if (content.Result.Profile is not { } profile || angles.Count == 0)
        {
            return fitted;
        }

        var pieces = Math.Clamp(MostFittedPoints / angles.Count, 1, 24);
        var broken = true;
        for (var i = 0; i + 1 < angles.Count; i++)
        {
            for (var piece = 0; piece < pieces; piece++)
            {
                var part = (double)piece / pieces;
                var height = profile.At(SmoothRise.At(seconds, angles, i, part))
                    + (drifts.Count == 0 ? 0 : Between(drifts[i], drifts[i + 1], part));
                if (!double.IsFinite(height))
                {
                    broken = true;
                    continue;
                }

                if (broken)
                {
                    fitted.Add([]);
                    broken = false;
                }

                fitted[^1].Add(new(Between(seconds[i], seconds[i + 1], part), LengthText.InUnit(height, content.Unit)));
            }
        }

        return fitted;
    }

    private static List<TurnSpan> Spans(RunoutPictureContent content)
    {
        var spans = new List<TurnSpan>();
        var seconds = content.Seconds.Span;
        var angles = content.Result.AngleDegrees;
        var (began, turn, last) = (0.0, double.NaN, -1);
        for (var i = 0; i < angles.Count; i++)
        {
            if (!double.IsFinite(angles[i]))
            {
                continue;
            }

            if (last < 0)
            {
                (began, turn) = (seconds[i], Math.Floor(angles[i] / 360));
            }

            while (last >= 0 && angles[i] >= 360 * (turn + 1))
            {
                var passed = Between(seconds[last], seconds[i], (360 * (turn + 1) - angles[last]) / (angles[i] - angles[last]));
                spans.Add(new(spans.Count + 1, began, passed));
                (began, turn) = (passed, turn + 1);
            }

            last = i;
        }

        if (last >= 0 && seconds[last] > began)
        {
            spans.Add(new(spans.Count + 1, began, seconds[last]));
        }

        return spans;
    }

    private static double Between(double from, double to, double part) => from + (to - from) * part;
}
