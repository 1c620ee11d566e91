using System.Globalization;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;
using Handspun.Terminal;

namespace Handspun.Finding;

/// <summary>Live gauges at a terminal.</summary>
internal static class WatchText
{
    /// <summary>One row a gauge, and below it what to do where something is wrong.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<(GaugeState State, double? Millimetres)> gauges, GaugeClock clock, LengthUnit unit, Paint paint)
    {
        var rows = Columns.Of([.. gauges.Select(gauge => Row(gauge.State, gauge.Millimetres, clock, unit))]);
        foreach (var ((state, _), row) in gauges.Zip(rows))
        {
            yield return $"{Sign(state, paint)} {row}";
            if (state.Condition != GaugeCondition.Reading)
            {
                yield return paint.Faint($"    {state.Sentence}");
            }
        }
    }

    /// <summary>How long ago the newest reading came; null where none has come.</summary>
    public static TimeSpan? AgeOf(GaugeState state, GaugeClock clock) => clock.Now - state.LastReading;

    private static string[] Row(GaugeState state, double? millimetres, GaugeClock clock, LengthUnit unit) =>
    [
        state.Gauge.ToString(),
        millimetres is { } value ? Signed(LengthText.Of(Length.FromMillimetres(value), unit)) : "no reading yet",
        string.Create(CultureInfo.InvariantCulture, $"{state.ReadingsPerSecond,5:0.0} a second"),
        AgeOf(state, clock) is { } age ? string.Create(CultureInfo.InvariantCulture, $"{age.TotalSeconds,6:0.00} s old") : "",
        string.Create(CultureInfo.InvariantCulture, $"{state.Readings} readings{(state.Unreadable > 0 ? $", {state.Unreadable} unreadable" : "")}{(state.Pulses > 0 ? $", {state.Pulses} index pulses" : "")}"),
    ];

    private static string Signed(string length) => length.StartsWith('-') || length.StartsWith('\u2212') ? length : "+" + length;

    private static string Sign(GaugeState state, Paint paint) => state.Condition switch
    {
        GaugeCondition.Reading => paint.Good("●"),
        GaugeCondition.Silent => paint.Mind("○"),
        _ => paint.Bad("✗"),
    };
}
