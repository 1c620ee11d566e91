using System.Globalization;
using Handspun.Jobs.Points;

namespace Handspun.Export;

/// <summary>Writes a capture as the plain CSV that <c>handspun analyze</c> reads.</summary>
internal static class CsvExport
{
    /// <summary>Writes it, lines ending in LF.</summary>
    public static void Write(CaptureExport capture, TextWriter into)
    {
        into.NewLine = "\n";
        into.WriteLine(string.Create(CultureInfo.InvariantCulture, $"# gauge {capture.Gauge}, profile {capture.Profile}, started {capture.At.UtcDateTime:yyyy-MM-dd'T'HH:mm:ss.ffffff'Z'}"));
        if (capture.Point is { } point)
        {
            into.WriteLine($"# point = {point}");
        }

        into.WriteLine("# unit = mm");
        Key(into, "resolution_mm", capture.ResolutionMm);
        Key(into, "error_limit_mm", capture.ErrorLimitMm);
        Key(into, "index_turns", capture.IndexTurns);
        if (capture.Setup is SettingSetup set)
        {
            Setting(into, set);
        }

        if (capture.Setup is RunoutSetup { LeverDegrees: { } lever })
        {
            Key(into, "lever_deg", lever);
        }

        if (capture.Setup is RunoutSetup { Celsius: { } celsius })
        {
            Key(into, "temperature_c", celsius);
        }

        into.WriteLine("time_s,channel,value");
        foreach (var (time, channel, value) in Rows(capture))
        {
            into.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{time:0.000000},{channel},{value}"));
        }
    }

    private static void Key(TextWriter into, string key, double value) => into.WriteLine(string.Create(CultureInfo.InvariantCulture, $"# {key} = {value}"));

    private static void Setting(TextWriter into, SettingSetup set)
    {
        if (set is { SettingMillimetres: { } size, SettingU95Millimetres: { } known })
        {
            Key(into, "setting_mm", size);
            Key(into, "setting_u95_mm", known);
            Key(into, "setting_shown_mm", set.ShownMillimetres);
        }

        into.WriteLine($"# larger_reads = {(set.LargerReadsLower ? "lower" : "higher")}");
    }

    private static IEnumerable<(double Time, string Channel, double Value)> Rows(CaptureExport capture) => capture.Readings.TimeS
        .Zip(capture.Readings.Mm, (time, value) => (time, "reading", value))
        .Concat(capture.Index.Select(time => (time, "index", 1.0)))
        .Concat(capture.Marks.Select(time => (time, "mark", 1.0)))
        .OrderBy(row => row.time);
}
