using System.Buffers;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Simulation;
using Handspun.Simulation.Speech;

namespace Handspun.VirtualGauge.Samples;

/// <summary>Writes what a gauge sends during one capture into a journal, as if it had been heard on a port.</summary>
/// <param name="shape">The shaft.</param>
/// <param name="indicator">The indicator.</param>
/// <param name="profile">The name of the shipped profile that reads it.</param>
/// <param name="speak">How the indicator puts what it shows into bytes.</param>
/// <param name="seed">The same seed gives the same journal.</param>
internal sealed class SampleRecording(ShaftShape shape, Indicator indicator, string profile, Func<Shown, byte[]> speak, int seed)
{
    private const double OpenedAt = 0.1;
    private const double FirstFrameAt = 0.35;   // long after the opening, so that the first frame counts
    private const double StandsFor = 0.4;
    private const double SplitShare = 0.1;

    private readonly GaugeProfile _profile = new ProfileShelf(ProfileShelf.ShippedFolder).Find(profile);
    private readonly Random _chance = new(seed);

    /// <summary>Whether the indicator is switched to inches half way.</summary>
    public bool SwitchesUnit { get; init; }

    /// <summary>Writes it, over a file of that name.</summary>
    /// <returns>The true runout in millimetres.</returns>
    public double WriteTo(string file, double hertz, double turns, double turnsPerSecond)
    {
        var hand = HandTurn.Create(seed, turns, turnsPerSecond);
        var drawn = CaptureSimulation.Run(shape, hand, indicator with { ResolutionMillimetres = _profile.Accuracy.ResolutionMillimetres, RateHz = hertz, JitterMilliseconds = 0.5 }, seed, StandsFor, StandsFor);
        File.Delete(file);
        using var journal = JournalWriter.Create(file, SampleHeader.Of(_profile, "/dev/ttyUSB0", TimeSpan.FromSeconds(FirstFrameAt)));
        journal.AppendEvent(TimeSpan.FromSeconds(OpenedAt), JournalEntry.LinkOpened);
        for (var at = 0; at < drawn.Seconds.Length; at++)
        {
            Append(journal, FirstFrameAt + drawn.Seconds[at], speak(new Shown(drawn.Millimetres[at], Inch: SwitchesUnit && at > drawn.Seconds.Length / 2)));
        }

        journal.AppendEvent(TimeSpan.FromSeconds(FirstFrameAt + drawn.Seconds[^1] + StandsFor), JournalEntry.CaptureEnded, "enough");
        return drawn.TrueTirMillimetres;
    }

    // As a driver hands them over: now and then a frame comes in two pieces.
    private void Append(JournalWriter journal, double seconds, byte[] frame)
    {
        var cut = _chance.NextDouble() < SplitShare ? _chance.Next(1, frame.Length) : frame.Length;
        Append(journal, seconds, frame.AsMemory(0, cut));
        if (cut < frame.Length)
        {
            Append(journal, seconds + 0.001, frame.AsMemory(cut));
        }
    }

    private static void Append(JournalWriter journal, double seconds, ReadOnlyMemory<byte> bytes) =>
        journal.Append(TimeSpan.FromMicroseconds(Math.Round(seconds * 1e6)), new ReadOnlySequence<byte>(bytes));
}
