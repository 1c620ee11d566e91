using System.Globalization;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Accuracy;

/// <summary>How the method did on one class of captures; lengths in micrometres.</summary>
internal sealed record ClassScore
{
    /// <summary>The table's heading.</summary>
    public static string Heading => "class                     n answered   ours  range informed  ours90  range90   covered  median U  turns ok  high90 deg   warned  missed over  faults";

    /// <summary>The class's name.</summary>
    public required string Name { get; init; }

    /// <summary>Captures.</summary>
    public required int Captures { get; init; }

    /// <summary>Captures that got a runout.</summary>
    public required int Answered { get; init; }

    /// <summary>Error of the runout: ours, highest minus lowest, informed fit; sorted.</summary>
    public required double[] Ours { get; init; }

    /// <summary>Error of highest minus lowest reading, sorted.</summary>
    public required double[] Range { get; init; }

    /// <summary>Error of the fit that knows the angle, sorted.</summary>
    public required double[] Informed { get; init; }

    /// <summary>Share of the true runouts that lie within the expanded uncertainty.</summary>
    public required double Covered { get; init; }

    /// <summary>Expanded uncertainties, sorted.</summary>
    public required double[] Uncertainty { get; init; }

    /// <summary>Share of the captures whose turns came out within a tenth.</summary>
    public required double TurnsRight { get; init; }

    /// <summary>Error of the high spot in degrees, sorted; empty where there is no reference.</summary>
    public required double[] HighSpot { get; init; }

    /// <summary>Share of those with a wrong count of turns that carry the warning for it; 1 where none is wrong.</summary>
    public required double Warned { get; init; }

    /// <summary>Share of shafts a hair over a limit that would be called within it: the result and all of its uncertainty lie below the truth.</summary>
    public required double MissedOver { get; init; }

    /// <summary>Share of the captures in which a local fault was named: of those that have one, where the class has one; false alarms elsewhere.</summary>
    public required double Faults { get; init; }

    /// <summary>The class as a line of the table.</summary>
    public string Line => string.Create(CultureInfo.InvariantCulture, $"{Name,-22}{Captures,5}{Answered,9}{Sorted.At(Ours, 0.5),7:0.00}{Sorted.At(Range, 0.5),7:0.00}{Sorted.At(Informed, 0.5),9:0.00}{Sorted.At(Ours, 0.9),8:0.00}{Sorted.At(Range, 0.9),9:0.00}{Covered,10:0.000}{Sorted.At(Uncertainty, 0.5),10:0.00}{TurnsRight,10:0.000}{Sorted.At(HighSpot, 0.9),12:0.0}{Warned,9:0.00}{MissedOver,13:0.000}{Faults,8:0.000}");

    /// <summary>Measures so many captures of a class.</summary>
    public static ClassScore Of(CaptureKind kind, int captures, int seed)
    {
        List<double> ours = [], range = [], informed = [], uncertainty = [], high = [];
        var (covered, right, wrong, warned, missed, faults) = (0, 0, 0, 0, 0, 0);
        for (var i = 0; i < captures; i++)
        {
            var drawn = kind.Draw(seed * 100_003 + i);
            var truth = drawn.Capture.TrueTirMillimetres;
            var result = RunoutMethod.Measure(drawn.Capture.ToCapture(drawn.Aid), GaugeOf(drawn), new RunoutSettings());
            range.Add(1000 * Math.Abs(drawn.Capture.Millimetres.Max() - drawn.Capture.Millimetres.Min() - truth));
            informed.Add(1000 * Math.Abs(InformedFit.Tir(drawn) - truth));
            if (result is not { Tir: { } tir, TirU95: { } expanded })
            {
                continue;
            }

            var error = Math.Abs(tir.Millimetres - truth);
            ours.Add(1000 * error);
            uncertainty.Add(1000 * expanded.Millimetres);
            faults += result.Faults.Count > 0 ? 1 : 0;
            missed += tir.Millimetres + expanded.Millimetres < truth ? 1 : 0;
            covered += error <= expanded.Millimetres ? 1 : 0;
            var turns = (drawn.Capture.TrueDegrees[^1] - drawn.Capture.TrueDegrees[0]) / 360;
            if (Math.Abs(result.Turns - turns) < 0.15)
            {
                right++;
            }
            else
            {
                wrong++;
                warned += result.Warnings.Contains(RunoutWarning.TurnCountAmbiguous) ? 1 : 0;
            }

            if (result.Reference != AngleReference.FirstReading)
            {
                var off = result.HighSpot!.Value.Degrees - drawn.Capture.TrueHighSpotDegrees;
                high.Add(Math.Abs(off - 360 * Math.Round(off / 360)));
            }
        }

        return new ClassScore
        {
            Name = kind.Name,
            Captures = captures,
            Answered = ours.Count,
            Ours = [.. ours.Order()],
            Range = [.. range.Order()],
            Informed = [.. informed.Order()],
            Covered = covered / Math.Max(1.0, ours.Count),
            Uncertainty = [.. uncertainty.Order()],
            TurnsRight = right / Math.Max(1.0, ours.Count),
            HighSpot = [.. high.Order()],
            MissedOver = missed / Math.Max(1.0, ours.Count),
            Faults = faults / Math.Max(1.0, ours.Count),
            Warned = wrong == 0 ? 1 : (double)warned / wrong,
        };
    }

    private static GaugeTraits GaugeOf(DrawnCapture drawn) =>
        new() { Resolution = Length.FromMillimetres(drawn.Indicator.ResolutionMillimetres), PlungerLeanDegrees = 0 };
}
