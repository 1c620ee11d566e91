using BenchmarkDotNet.Attributes;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Benchmarks;

/// <summary>What it costs to follow a capture of a minute at 100 Hz, ten looks a second, beside one measurement at its end.</summary>
[MemoryDiagnoser]
public class LiveRunoutBenchmarks
{
    private const int Readings = 6_000;
    private const int EachLook = 10;
    private static readonly GaugeTraits Gauge = new() { Resolution = Length.FromMillimetres(0.001) };
    private static readonly RunoutSettings Settings = new();
    private SimulatedCapture _drawn = null!;

    /// <summary>Whether an index pulse comes once a turn.</summary>
    [Params(false, true)]
    public bool Index { get; set; }

    /// <summary>Simulates the capture.</summary>
    [GlobalSetup]
    public void Simulate()
    {
        var turn = HandTurn.Create(seed: 11, turns: 30, turnsPerSecond: 0.5);
        _drawn = CaptureSimulation.Run(
            ShaftShape.WithTir(0.08, seed: 5, harmonics: 3), turn, new Indicator { RateHz = Readings / turn.Seconds }, seed: 3, 0, 0, Index ? AngleAid.IndexEachTurn : AngleAid.None);
    }

    /// <summary>The yardstick: the finished capture, once.</summary>
    [Benchmark(Baseline = true)]
    public RunoutResult Finished() => RunoutMethod.Measure(SoFar(_drawn.Seconds.Length), Gauge, Settings);

    /// <summary>All looks of the whole minute; a sixtieth of it is what a second costs.</summary>
    [Benchmark]
    public RunoutResult SixHundredLooks()
    {
        var follower = new RunoutFollower(Gauge, Settings);
        RunoutResult look = null!;
        for (var readings = EachLook; readings <= _drawn.Seconds.Length; readings += EachLook)
        {
            look = follower.Look(SoFar(readings));
        }

        return look;
    }

    private RotationCapture SoFar(int readings) => new()
    {
        Seconds = _drawn.Seconds.AsMemory(0, readings),
        Millimetres = _drawn.Millimetres.AsMemory(0, readings),
        IndexSeconds = _drawn.IndexSeconds.AsSpan(0, _drawn.IndexSeconds.Count(at => at <= _drawn.Seconds[readings - 1])).ToArray(),
    };
}
