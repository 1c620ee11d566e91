using System.Buffers;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Simulation;
using Handspun.Simulation.Speech;

namespace Handspun.VirtualGauge.Samples;

/// <summary>Writes the reports that a HID gauge sends during one capture into a journal, as if it had been plugged in.</summary>
/// <param name="shape">The shaft.</param>
/// <param name="indicator">The indicator.</param>
/// <param name="profile">The name of the shipped profile that reads it.</param>
/// <param name="seed">The same seed gives the same journal.</param>
internal sealed class HidSampleRecording(ShaftShape shape, Indicator indicator, string profile, int seed)
{
    private const double OpenedAt = 0.1;
    private const double FirstReportAt = 0.35;
    private const double ReportEvery = 0.001;   // the fastest that a full-speed USB device is asked for reports
    private const double StandsFor = 0.4;
    private const double IndexClosedFor = 0.06;

    private readonly GaugeProfile _profile = new ProfileShelf(ProfileShelf.ShippedFolder).Find(profile);
    private readonly HidSpeech _speech = HidSpeech.ByProfile[profile];

    /// <summary>Writes it, over a file of that name.</summary>
    /// <returns>The true runout in millimetres.</returns>
    public double WriteTo(string file, double hertz, double turns, double turnsPerSecond)
    {
        var hand = HandTurn.Create(seed, turns, turnsPerSecond);
        var drawn = CaptureSimulation.Run(
            shape, hand, indicator with { ResolutionMillimetres = _profile.Accuracy.ResolutionMillimetres, RateHz = hertz, JitterMilliseconds = 0.5 }, seed, StandsFor, StandsFor, AngleAid.IndexEachTurn);
        File.Delete(file);
        using var journal = JournalWriter.Create(file, SampleHeader.Of(_profile, "hid:12AB:00CD", TimeSpan.FromSeconds(FirstReportAt)));
        journal.AppendEvent(TimeSpan.FromSeconds(OpenedAt), JournalEntry.LinkOpened);
        journal.AppendEvent(TimeSpan.FromSeconds(OpenedAt), JournalEntry.ReportDescriptor, Convert.ToHexString(_speech.Descriptor));
        for (var at = 0; at < drawn.Seconds.Length; at++)
        {
            var now = drawn.Seconds[at];
            var isClosed = drawn.IndexSeconds.Any(pulse => now >= pulse && now < pulse + IndexClosedFor);
            foreach (var report in _speech.Reports(drawn.Millimetres[at], isClosed))
            {
                journal.Append(TimeSpan.FromMicroseconds(Math.Round((FirstReportAt + now) * 1e6)), new ReadOnlySequence<byte>(report));
                now += ReportEvery;
            }
        }

        journal.AppendEvent(TimeSpan.FromSeconds(FirstReportAt + drawn.Seconds[^1] + StandsFor), JournalEntry.CaptureEnded, "enough");
        return drawn.TrueTirMillimetres;
    }
}
