using Handspun.Metrology.Bore;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Bore;

/// <summary>Readings of a gauge that leans like a pendulum.</summary>
internal static class RockedBores
{
    /// <summary>A gauge in a bore of 21.4 mm, leaning as a cosine of time; what it shows there is the diameter over the cosine of the lean.</summary>
    public static (double[] Seconds, double[] Millimetres) Of(double shown, double swings, double lean = 6, double step = 0.001, double centre = 0)
    {
        const double diameter = 21.4;
        const double swingSeconds = 1;
        const double hertz = 40;
        double[] seconds = [.. Enumerable.Range(0, (int)(swings * swingSeconds * hertz) + 1).Select(i => i / hertz)];
        return (seconds, [.. seconds.Select(time =>
        {
            var degrees = centre + lean * Math.Cos(Math.PI * time / swingSeconds);
            var value = shown + diameter * (1 / Math.Cos(degrees * Math.PI / 180) - 1);
            return step > 0 ? Math.Round(value / step) * step : value;
        })]);
    }

    public static BoreResult Measure((double[] Seconds, double[] Millimetres) capture, double step = 0.001, BoreSettings? settings = null) =>
        BoreMethod.Measure(capture.Seconds, capture.Millimetres, new GaugeTraits { Resolution = Length.FromMillimetres(step) }, settings ?? new BoreSettings());

    public static BoreSetting Ring(double size, double shown = 0) =>
        new(Length.FromMillimetres(size), Length.FromMillimetres(0.0012), Length.FromMillimetres(shown), Length.Zero);
}
