using BenchmarkDotNet.Attributes;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;
using MathNet.Numerics;

namespace Handspun.Benchmarks;

/// <summary>What the measuring method costs, beside a general library's least-squares fit that is told every angle.</summary>
[MemoryDiagnoser]
public class RunoutBenchmarks
{
    private const double Hertz = 100;
    private RotationCapture _capture = null!;
    private double[] _radians = [];
    private double[] _millimetres = [];

    /// <summary>Readings in the capture: three turns, a minute, and far more than anybody takes.</summary>
    [Params(600, 6_000, 1_000_000)]
    public int Readings { get; set; }

    /// <summary>Whether an index pulse comes once a turn.</summary>
    [Params(false, true)]
    public bool Index { get; set; }

    /// <summary>Simulates the capture.</summary>
    [GlobalSetup]
    public void Simulate()
    {
        var seconds = Readings / Hertz;
        var turn = HandTurn.Create(seed: 11, turns: seconds * 0.5, turnsPerSecond: 0.5);
        var drawn = CaptureSimulation.Run(
            ShaftShape.WithTir(0.08, seed: 5, harmonics: 3), turn, new Indicator { RateHz = Readings / turn.Seconds }, seed: 3, 0, 0, Index ? AngleAid.IndexEachTurn : AngleAid.None);
        _radians = [.. drawn.TrueDegrees.Select(degrees => degrees * Math.PI / 180)];
        _millimetres = drawn.Millimetres;
        _capture = new RotationCapture { Seconds = drawn.Seconds, Millimetres = drawn.Millimetres, IndexSeconds = drawn.IndexSeconds };
    }

    /// <summary>The yardstick: five unknowns, every angle known.</summary>
    [Benchmark(Baseline = true)]
    public double[] GeneralFitThatKnowsTheAngle() =>
        Fit.LinearCombination(_radians, _millimetres, _ => 1, Math.Cos, Math.Sin, a => Math.Cos(2 * a), a => Math.Sin(2 * a));

    /// <summary>The method: nothing known but the readings, or the pulses too.</summary>
    [Benchmark]
    public RunoutResult Measure() =>
        RunoutMethod.Measure(_capture, new GaugeTraits { Resolution = Length.FromMillimetres(0.001) }, new RunoutSettings());
}
