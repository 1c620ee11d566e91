using System.Globalization;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Accuracy.Lift;

/// <summary>How the lift method did on one class; lengths in micrometres, angles in degrees of the crank.</summary>
internal sealed record LiftScore
{
    private const double CheckingMillimetres = 1.27;

    /// <summary>The table's heading.</summary>
    public static string Heading => "class                     n answered  lift50 lift90  in 10um covered   U50  centre50 centre90   in 1deg covered    U50    dur90 covered    U50";

    /// <summary>The class's name.</summary>
    public required string Name { get; init; }

    /// <summary>Captures.</summary>
    public required int Captures { get; init; }

    /// <summary>Error and expanded uncertainty of the lobe lift, one for each capture that got an answer.</summary>
    public required IReadOnlyList<(double Error, double U)> Lift { get; init; }

    /// <summary>The same of the centreline.</summary>
    public required IReadOnlyList<(double Error, double U)> Centreline { get; init; }

    /// <summary>The same of the duration.</summary>
    public required IReadOnlyList<(double Error, double U)> Duration { get; init; }

    /// <summary>Share of the captures whose lift is right within 0.01 mm.</summary>
    public double LiftRight => Lift.Count(one => one.Error <= 10) / (double)Captures;

    /// <summary>Share of the captures whose centreline is right within a degree of the crank.</summary>
    public double CentrelineRight => Centreline.Count(one => one.Error <= 1) / (double)Captures;

    /// <summary>The class as a line of the table.</summary>
    public string Line => string.Create(CultureInfo.InvariantCulture, $"{Name,-22}{Captures,5}{Lift.Count,9}{Error(Lift, 0.5),8:0.00}{Error(Lift, 0.9),7:0.00}{LiftRight,9:0.000}{Covered(Lift),8:0.000}{Middle(Lift),6:0.0}{Error(Centreline, 0.5),10:0.00}{Error(Centreline, 0.9),9:0.00}{CentrelineRight,10:0.000}{Covered(Centreline),8:0.000}{Middle(Centreline),7:0.00}{Error(Duration, 0.9),9:0.00}{Covered(Duration),8:0.000}{Middle(Duration),7:0.00}");

    /// <summary>Share of the true values within the expanded uncertainty.</summary>
    public static double Covered(IReadOnlyList<(double Error, double U)> scores) =>
        scores.Count(one => one.Error <= one.U) / Math.Max(1.0, scores.Count);

    /// <summary>Measures so many captures of a class.</summary>
    public static LiftScore Of(LiftKind kind, int captures, int seed)
    {
        List<(double, double)> lift = [], centre = [], duration = [];
        for (var i = 0; i < captures; i++)
        {
            var drawn = kind.Draw(seed * 100_003 + i);
            var result = Measure(drawn);
            if (result is not { LobeLift: { } lobeLift, Centreline: { } middle, Duration: { } open })
            {
                continue;
            }

            var lobe = drawn.Lobe;
            // Calls are counted from the first one, as pulses are.
            var first = drawn.Aid.Marks ? 360 * Math.Ceiling(drawn.Capture.TrueDegrees[0] / 360) : drawn.Capture.ZeroDegrees;
            var zero = first * (drawn.Shaft == AngleShaft.Crank ? 0.5 : 1);
            var truth = lobe.MiddleBelow(CheckingMillimetres) - zero;
            var off = middle.Value.Degrees - truth;
            lift.Add((1000 * Math.Abs(lobeLift.Value.Millimetres - lobe.LiftMillimetres), 1000 * lobeLift.U95.Millimetres));
            centre.Add((2 * Math.Abs(off - 360 * Math.Round(off / 360)), middle.U95.AtCrank().Degrees));
            var trueDuration = 2 * (lobe.ClosesAt(CheckingMillimetres) - lobe.OpensAt(CheckingMillimetres));
            duration.Add((Math.Abs(open.Value.AtCrank().Degrees - trueDuration), open.U95.AtCrank().Degrees));
        }

        return new() { Name = kind.Name, Captures = captures, Lift = lift, Centreline = centre, Duration = duration };
    }

    private static LiftResult Measure(DrawnLift drawn)
    {
        var gauge = new GaugeTraits { Resolution = Length.FromMillimetres(drawn.Indicator.ResolutionMillimetres), PlungerLeanDegrees = 0 };
        return LiftMethod.Measure(drawn.Capture.ToCapture(drawn.Aid), gauge, new LiftSettings { AngleOf = drawn.Shaft });
    }

    private static double Error(IReadOnlyList<(double Error, double U)> scores, double share) => Sorted.At([.. scores.Select(one => one.Error).Order()], share);

    private static double Middle(IReadOnlyList<(double Error, double U)> scores) => Sorted.At([.. scores.Select(one => one.U).Order()], 0.5);
}
