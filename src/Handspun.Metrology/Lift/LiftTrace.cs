using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Lift;

/// <summary>The readings of a lift capture that a fit may use: all but single wild ones, for a tappet that rests is no cam that stands.</summary>
internal static class LiftTrace
{
    /// <summary>Prepares a valid capture.</summary>
    public static Trace Of(RotationCapture capture, double statedResolution)
    {
        var millimetres = capture.Millimetres.Span;
        var resolution = statedResolution > 0 ? statedResolution : ReadingNoise.Step(millimetres);
        var noise = Math.Max(ReadingNoise.Between(millimetres), resolution / Math.Sqrt(12));
        var spread = ArrivalTimes.Spread(capture.Seconds.Span);
        var wild = Knocks.Find(millimetres, noise);
        int[] places = [.. Enumerable.Range(0, wild.Length).Where(i => !wild[i])];
        var values = millimetres.ToArray();
        return new Trace
        {
            Seconds = [.. places.Select(place => spread[place])],
            Millimetres = [.. places.Select(place => values[place])],
            Places = places,
            Rejected = [.. Enumerable.Range(0, wild.Length).Where(i => wild[i]).Select(i => new RejectedReading(i, RejectionReason.Knock))],
            Resolution = resolution,
            Noise = noise,
        };
    }

    /// <summary>The readings from one moment to another; what lies outside stays neither used nor left out.</summary>
    public static Trace Between(Trace trace, double from, double to)
    {
        int[] within = [.. Enumerable.Range(0, trace.Seconds.Length).Where(i => trace.Seconds[i] >= from && trace.Seconds[i] <= to)];
        return new Trace
        {
            Seconds = [.. within.Select(i => trace.Seconds[i])],
            Millimetres = [.. within.Select(i => trace.Millimetres[i])],
            Places = [.. within.Select(i => trace.Places[i])],
            Rejected = trace.Rejected,
            Resolution = trace.Resolution,
            Noise = trace.Noise,
        };
    }
}
