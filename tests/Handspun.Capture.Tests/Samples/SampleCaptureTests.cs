using System.Reflection;
using Handspun.Capture.Finishing;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Tests.Samples;

/// <summary>The recorded captures replay through the real decoders, and their runout covers what is known of the shaft.</summary>
public sealed class SampleCaptureTests
{
    private static readonly string Folder = typeof(SampleCaptureTests).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == "SampleCaptures").Value!;

    [Theory]
    [InlineData("text-line-pinion-runout.jsonl", 0.0815)]   // by construction of the virtual shaft, as all of them
    [InlineData("text-exponent-pinion-runout.jsonl", 0.08)]
    [InlineData("text-columns-pinion-runout.jsonl", 0.08)]   // switched to inches half way
    [InlineData("text-labelled-pinion-runout.jsonl", 0.08)]
    [InlineData("nibbles-hex-pinion-runout.jsonl", 0.08)]
    [InlineData("nibbles-packed-pinion-runout.jsonl", 0.08)]
    [InlineData("bits-three-bytes-pinion-runout.jsonl", 0.08)]
    [InlineData("bits-counted-pinion-runout.jsonl", 0.08)]
    [InlineData("registers-whole-pinion-runout.jsonl", 0.08)]
    [InlineData("registers-float-pinion-runout.jsonl", 0.08)]
    [InlineData("hid-report-pinion-runout.jsonl", 0.08)]
    [InlineData("hid-report-index-pinion-runout.jsonl", 0.08)]
    [InlineData("hid-report-bits-pinion-runout.jsonl", 0.08)]
    [InlineData("hid-keyboard-pinion-runout.jsonl", 0.08)]
    public void Sample_ReplayedAndMeasured_CoversTheTruth(string file, double trueTirMillimetres)
    {
        var replay = JournalReplay.Read(Path.Combine(Folder, file));
        Assert.Equal(0, replay.Unreadable);
        Assert.False(replay.Torn);
        Assert.Equal("enough", replay.Ended);
        Assert.Equal(file.StartsWith("text-columns", StringComparison.Ordinal) ? 1 : 0, replay.UnitSwitches);
        Assert.Equal(file.StartsWith("hid-report-index", StringComparison.Ordinal), replay.Pulses.Count is 3 or 4);   // 3.6 turns

        var result = RunoutMethod.Measure(
            ReplayedCapture.Of(replay, TimeSpan.Zero),
            RecordMaking.TraitsOf(ProfileReader.Read(replay.Header.Profile, replay.Header.ProfileText)),
            new RunoutSettings());

        Assert.Equal(RunoutStatus.Measured, result.Status);
        Assert.InRange(result.Turns, 3, 4);
        Assert.InRange(trueTirMillimetres, (result.Tir - result.TirU95)!.Value.Millimetres, (result.Tir + result.TirU95)!.Value.Millimetres);
    }
}
