namespace Handspun.Gauges.Listening;

/// <summary>What is said of a gauge's condition.</summary>
internal static class GaugeSentence
{
    public static string Reading(GaugeSetup setup) => $"Gauge '{setup.Name}' is sending readings.";

    public static string Opened(GaugeSetup setup) => $"{setup.Port} is open and nothing has come yet: switch the gauge on and set it to send.";

    public static string FellSilent(GaugeSetup setup) => $"Gauge '{setup.Name}' sends no readings: check that it is on, its battery, and that profile '{setup.Profile.Name}' suits it.";

    public static string Unreadable(GaugeSetup setup) => $"Gauge '{setup.Name}' sends, and none of it is a reading: check that profile '{setup.Profile.Name}' suits it, its baud rate first.";

    public static string Stumbled(GaugeSetup setup, Exception e) => $"Listening to gauge '{setup.Name}' at {setup.Port} failed ({e.Message}): it is tried again by itself; check the port and the profile.";

    public static string Lost(GaugeSetup setup) => $"The cable of gauge '{setup.Name}' went out at {setup.Port}: plug it in again, and it goes on by itself.";

    public static string Offline(GaugeSetup setup) => $"The station does not listen to gauge '{setup.Name}'.";
}
