using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Faults;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.Tests.Runout;

/// <summary>An invented record: a shaft of a known shape turned unevenly, read with noise, and a result that knows the truth.</summary>
internal sealed record InventedRecord
{
    public Harmonic[] Harmonics { get; init; } = [new(-0.021, 0.014), new(0.004, -0.003), new(0.0015, 0.001)];
    public double Turns { get; init; } = 3.3;
    public int Readings { get; init; } = 420;
    public double NoiseMillimetres { get; init; } = 0.0012;
    public double DriftMillimetres { get; init; } = 0.006;
    public double LevelMillimetres { get; init; } = 1.27;
    public double U95Millimetres { get; init; } = 0.003;
    public double FirstAngle { get; init; }
    public double StandingPart { get; init; } = 0.08;
    public (double Part, double Millimetres)[] Knocks { get; init; } = [];
    public AngleReference Reference { get; init; } = AngleReference.Index;
    public double? HighSpotU95 { get; init; } = 3;
    public Tolerance? Limit { get; init; } = Tolerance.AtMost(Length.FromInches(0.003));
    public Verdict? Verdict { get; init; } = Metrology.Decision.Verdict.Within;
    public LengthUnit Unit { get; init; }
    public RunoutWarning[] Warnings { get; init; } = [];
    public LocalFault[] Faults { get; init; } = [];
    public string Title { get; init; } = "Pinion shaft runout";
    public string Subtitle { get; init; } = "Job 1042 · 1974 parallel twin · 25 November 2026, 10:42";

    public RunoutPictureContent Content()
    {
        var noise = new Random(7);
        var profile = new ShaftProfile(LevelMillimetres, Harmonics);
        var (seconds, millimetres, angles, drifts) = (new double[Readings], new double[Readings], new double[Readings], new double[Readings]);
        var rejected = new List<RejectedReading>();
        var standing = (int)(Readings * StandingPart);
        for (var i = 0; i < Readings; i++)
        {
            var part = Math.Max(0, i - standing) / (double)Math.Max(1, Readings - 1 - standing);
            seconds[i] = 0.031 * i;
            angles[i] = FirstAngle + 360 * Turns * (part + 0.045 * Math.Sin(2 * Math.PI * part * 2.7) / Math.Max(1, Turns));
            drifts[i] = DriftMillimetres * part * part;
            millimetres[i] = profile.At(angles[i]) + drifts[i] + NoiseMillimetres * (noise.NextDouble() + noise.NextDouble() - 1);
            if (i < standing)
            {
                rejected.Add(new(i, RejectionReason.Standing));
            }
        }

        foreach (var (part, height) in Knocks)
        {
            millimetres[(int)(part * Readings)] += height;
            rejected.Add(new((int)(part * Readings), RejectionReason.Knock));
        }

        var turn = Enumerable.Range(0, 3600).Select(tenth => (Degrees: tenth / 10.0, Height: profile.At(tenth / 10.0))).ToArray();
        var tir = Length.FromMillimetres(turn.Max(at => at.Height) - turn.Min(at => at.Height));
        return new()
        {
            Title = Title,
            Subtitle = Subtitle,
            Seconds = seconds,
            Millimetres = millimetres,
            Unit = Unit,
            Limit = Limit,
            Verdict = Verdict,
            Result = new()
            {
                Status = RunoutStatus.Measured,
                Readings = Readings,
                Turns = Turns,
                Tir = tir,
                TirU95 = Length.FromMillimetres(U95Millimetres),
                HighSpot = Angle.FromDegrees(turn.MaxBy(at => at.Height).Degrees),
                LowSpot = Angle.FromDegrees(turn.MinBy(at => at.Height).Degrees),
                HighSpotU95Degrees = HighSpotU95,
                Reference = Reference,
                Profile = profile,
                AngleDegrees = angles,
                DriftMillimetres = drifts,
                TirByTurnMillimetres = [.. Enumerable.Range(0, (int)Turns).Select(i => tir.Millimetres + 0.0004 * Math.Sin(i))],
                Rejected = rejected,
                Warnings = Warnings,
                Faults = Faults,
            },
        };
    }

    /// <summary>The same readings before there is a result.</summary>
    public RunoutPictureContent WithoutRunout(RunoutStatus status, string missing)
    {
        var content = Content();
        return content with
        {
            Verdict = null,
            Result = new() { Status = status, Missing = missing, Readings = Readings, Turns = status == RunoutStatus.TooShort ? 0.6 : 0 },
        };
    }
}
