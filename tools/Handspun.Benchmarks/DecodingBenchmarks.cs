using System.Buffers;
using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Simulation;

namespace Handspun.Benchmarks;

/// <summary>What turning bytes into readings costs, beside splitting the same text and parsing it as everybody would.</summary>
[MemoryDiagnoser]
public class DecodingBenchmarks
{
    private const int Lines = 10_000;
    private readonly List<Reading> _readings = new(Lines);
    private readonly ReadingDecoder _decoder = new(ProfileReader.Read("text-line", ""));
    private byte[] _bytes = [];

    /// <summary>Makes the lines.</summary>
    [GlobalSetup]
    public void Make() =>
        _bytes = Encoding.ASCII.GetBytes(string.Concat(Enumerable.Range(0, Lines).Select(i => IndicatorLine.Of(Math.Round(Math.Sin(i / 50.0) * 0.08, 3), inch: false) + "\r\n")));

    /// <summary>The yardstick.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Lines)]
    public double SplitAndParse()
    {
        var sum = 0.0;
        foreach (var line in Encoding.ASCII.GetString(_bytes).Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            sum += double.Parse(line.Split(' ')[0], CultureInfo.InvariantCulture);
        }

        return sum;
    }

    /// <summary>The decoder.</summary>
    [Benchmark(OperationsPerInvoke = Lines)]
    public int Decode()
    {
        _readings.Clear();
        var pending = new ReadOnlySequence<byte>(_bytes);
        _decoder.Decode(ref pending, TimeSpan.FromSeconds(1), _readings);
        return _readings.Count;
    }
}
