using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.EndPlay;

/// <summary>Readings written down hold by hold.</summary>
internal static class PushPulls
{
    /// <summary>Holds of so many readings each, 50 a second, with quick moves of three readings between them.</summary>
    public static (double[] Seconds, double[] Millimetres) Of(double[] levels, int readings = 40, double step = 0.001, Func<int, double>? more = null)
    {
        List<double> values = [];
        for (var i = 0; i < levels.Length; i++)
        {
            values.AddRange(Enumerable.Repeat(levels[i], readings));
            if (i + 1 < levels.Length)
            {
                values.AddRange(new[] { 0.2, 0.5, 0.8 }.Select(part => levels[i] + part * (levels[i + 1] - levels[i])));
            }
        }

        var shown = values.Select((value, i) => Math.Round((value + (more?.Invoke(i) ?? 0)) / step) * step).ToArray();
        return ([.. shown.Select((_, i) => i / 50.0)], shown);
    }

    public static EndPlayResult Measure((double[] Seconds, double[] Millimetres) capture, double step = 0.001, EndPlaySettings? settings = null) =>
        EndPlayMethod.Measure(
            capture.Seconds,
            capture.Millimetres,
            new GaugeTraits { Resolution = Length.FromMillimetres(step), PlungerLeanDegrees = 0 },
            settings ?? new EndPlaySettings());
}
