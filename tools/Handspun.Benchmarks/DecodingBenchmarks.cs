using System.Buffers;
using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Simulation;
using Handspun.Simulation.Speech;

namespace Handspun.Benchmarks;

/// <summary>What turning bytes into readings costs for each kind of gauge, beside splitting lines of text and parsing them as everybody would.</summary>
[MemoryDiagnoser]
public class DecodingBenchmarks
{
    private const int Frames = 10_000;

    private readonly List<Reading> _readings = new(Frames);
    private readonly byte[] _lines = Encoding.ASCII.GetBytes(string.Concat(Heights().Select(height => IndicatorLine.Of(height, inch: false) + "\r\n")));
    private ReadingDecoder _decoder = null!;
    private byte[] _bytes = [];

    /// <summary>The profile that is decoded.</summary>
    [ParamsSource(nameof(Profiles))]
    public string Profile { get; set; } = "text-line";

    /// <summary>All that a simulated gauge can speak.</summary>
    public static IEnumerable<string> Profiles => GaugeSpeeches.ByProfile.Keys.Order(StringComparer.Ordinal);

    /// <summary>Makes the frames.</summary>
    [GlobalSetup]
    public void Make()
    {
        _bytes = [.. Heights().SelectMany(height => GaugeSpeeches.ByProfile[Profile](new(height)))];
        _decoder = new(new ProfileShelf(ProfileShelf.ShippedFolder).Find(Profile));
        if (Decode() < Frames - 1)   // the first may be passed over
        {
            throw new InvalidOperationException($"{Profile} does not read what it is given.");
        }
    }

    /// <summary>The yardstick.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Frames)]
    public double SplitAndParseLines()
    {
        var sum = 0.0;
        foreach (var line in Encoding.ASCII.GetString(_lines).Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            sum += double.Parse(line.Split(' ')[0], CultureInfo.InvariantCulture);
        }

        return sum;
    }

    /// <summary>The decoder.</summary>
    [Benchmark(OperationsPerInvoke = Frames)]
    public int Decode()
    {
        _readings.Clear();
        var pending = new ReadOnlySequence<byte>(_bytes);
        _decoder.Decode(ref pending, TimeSpan.FromSeconds(1), _readings);
        return _readings.Count;
    }

    private static IEnumerable<double> Heights() => Enumerable.Range(0, Frames).Select(at => Math.Round(Math.Sin(at / 50.0) * 0.08, 3));
}
