using System.Buffers;
using System.Buffers.Binary;
using BenchmarkDotNet.Attributes;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Simulation.Speech;

namespace Handspun.Benchmarks;

/// <summary>What turning HID reports into readings costs, one report a call as the link gives them, beside taking a fixed field out of the same bytes.</summary>
[MemoryDiagnoser]
public class HidBenchmarks
{
    private const int Values = 10_000;
    private static readonly ProfileShelf Shelf = new(ProfileShelf.ShippedFolder);

    private readonly List<Reading> _readings = new(Values);
    private byte[][] _sliders = [];
    private byte[][] _bits = [];
    private byte[][] _keys = [];
    private ReadingDecoder _slider = null!;
    private ReadingDecoder _bit = null!;
    private ReadingDecoder _key = null!;

    /// <summary>Makes the reports.</summary>
    [GlobalSetup]
    public void Make()
    {
        (_sliders, _slider) = Speak("hid-report-index", Values);
        (_bits, _bit) = Speak("hid-report-bits", Values);
        (_keys, _key) = Speak("hid-keyboard", Values / 10);
    }

    /// <summary>The yardstick.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Values)]
    public int FixedField()
    {
        _readings.Clear();
        foreach (var report in _sliders)
        {
            _readings.Add(Reading.FromMillimetres(BinaryPrimitives.ReadInt16LittleEndian(report) / 1000.0, TimeSpan.FromSeconds(1)));
        }

        return _readings.Count;
    }

    /// <summary>By usage, with scale and unit from the descriptor, a flag and an index.</summary>
    [Benchmark(OperationsPerInvoke = Values)]
    public int ByUsage() => Decode(_slider, _sliders);

    /// <summary>By place, with a flag.</summary>
    [Benchmark(OperationsPerInvoke = Values)]
    public int ByPlace() => Decode(_bit, _bits);

    /// <summary>Typed, for each value; every character of it is two reports.</summary>
    [Benchmark(OperationsPerInvoke = Values / 10)]
    public int Typed() => Decode(_key, _keys);

    private static (byte[][] Reports, ReadingDecoder Decoder) Speak(string profile, int values)
    {
        var speech = HidSpeech.ByProfile[profile];
        var decoder = new ReadingDecoder(Shelf.Find(profile));
        decoder.LinkOpened(TimeSpan.Zero);
        decoder.LinkDescribed(speech.Descriptor);
        return ([.. Enumerable.Range(0, values).SelectMany(i => speech.Reports(Math.Sin(i / 50.0) * 0.08, i % 100 == 0))], decoder);
    }

    private int Decode(ReadingDecoder decoder, byte[][] reports)
    {
        _readings.Clear();
        foreach (var report in reports)
        {
            var pending = new ReadOnlySequence<byte>(report);
            decoder.Decode(ref pending, TimeSpan.FromSeconds(1), _readings);
        }

        return _readings.Count;
    }
}
