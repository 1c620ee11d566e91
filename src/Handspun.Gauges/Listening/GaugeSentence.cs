using Handspun.Gauges.Decoding;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Listening;

/// <summary>What is said of a gauge's condition.</summary>
internal static class GaugeSentence
{
    private static readonly (GaugeFlags Flag, string Words)[] Remarks =
    [
        (GaugeFlags.BatteryLow, "its battery is low: change it soon"),
        (GaugeFlags.Hold, "its display is held: release it, or no movement is seen"),
        (GaugeFlags.Alarm, "it reports an alarm: look at its display"),
        (GaugeFlags.Reversed, "it is set to count the other way: set it back"),
    ];

    public static string Reading(GaugeSetup setup, ReadingDecoder decoder)
    {
        var remarks = Remarks.Where(remark => decoder.Flags.HasFlag(remark.Flag)).Select(remark => remark.Words);
        if (decoder.UnitSwitches > 0)
        {
            remarks = remarks.Append($"it was switched to {(decoder.StatedUnit == GaugeUnit.Inch ? "inches" : "millimetres")}, and its readings stay right");
        }

        return string.Join("; ", remarks.Prepend($"Gauge '{setup.Name}' is sending readings")) + ".";
    }

    public static string Overrange(GaugeSetup setup) => $"Gauge '{setup.Name}' is beyond its range: move its stand until the plunger is in the middle of its travel.";

    public static string Opened(GaugeSetup setup) => $"{setup.Port} is open and nothing has come yet: switch the gauge on and set it to send.";

    public static string FellSilent(GaugeSetup setup) => $"Gauge '{setup.Name}' sends no readings: check that it is on, its battery, and that profile '{setup.Profile.Name}' suits it.";

    public static string Unreadable(GaugeSetup setup) => $"Gauge '{setup.Name}' sends, and none of it is a reading: check that profile '{setup.Profile.Name}' suits it{(setup.Profile.Hid is null ? ", its baud rate first" : "")}.";

    public static string Stumbled(GaugeSetup setup, Exception e) => $"Listening to gauge '{setup.Name}' at {setup.Port} failed ({e.Message}): it is tried again by itself; check the port and the profile.";

    public static string Lost(GaugeSetup setup) => $"The cable of gauge '{setup.Name}' went out at {setup.Port}: plug it in again, and it goes on by itself.";

    public static string Offline(GaugeSetup setup) => $"The station does not listen to gauge '{setup.Name}'.";
}
