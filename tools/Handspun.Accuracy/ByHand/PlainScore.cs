using System.Globalization;

namespace Handspun.Accuracy.ByHand;

/// <summary>How a method did on one class of captures; lengths in micrometres.</summary>
internal sealed record PlainScore
{
    /// <summary>The table's heading.</summary>
    public static string Heading => "class                       n answered   ours  ours90   covered  median U  cycles ok";

    /// <summary>The class's name.</summary>
    public required string Name { get; init; }

    /// <summary>Captures.</summary>
    public required int Captures { get; init; }

    /// <summary>Errors of the captures that got an answer, sorted.</summary>
    public required double[] Errors { get; init; }

    /// <summary>Expanded uncertainties, sorted.</summary>
    public required double[] Uncertainty { get; init; }

    /// <summary>Share of the true values that lie within the expanded uncertainty.</summary>
    public required double Covered { get; init; }

    /// <summary>Share of the captures whose cycles were all counted.</summary>
    public required double CyclesRight { get; init; }

    /// <summary>The class as a line of the table.</summary>
    public string Line => string.Create(CultureInfo.InvariantCulture, $"{Name,-24}{Captures,5}{Errors.Length,9}{Sorted.At(Errors, 0.5),7:0.00}{Sorted.At(Errors, 0.9),8:0.00}{Covered,10:0.000}{Sorted.At(Uncertainty, 0.5),10:0.00}{CyclesRight,11:0.000}");

    /// <summary>Measures so many captures of a class.</summary>
    public static PlainScore Of(PlainKind kind, int captures, int seed)
    {
        List<double> errors = [], uncertainty = [];
        var (covered, right) = (0, 0);
        for (var i = 0; i < captures; i++)
        {
            var drawn = kind.Draw(seed * 100_003 + i);
            if (kind.Measure(drawn) is not { } answer)
            {
                continue;
            }

            var error = Math.Abs(answer.Millimetres - drawn.Capture.TrueMillimetres);
            errors.Add(1000 * error);
            uncertainty.Add(1000 * answer.U95Millimetres);
            covered += error <= answer.U95Millimetres ? 1 : 0;
            right += answer.Cycles == drawn.Capture.TrueCycles ? 1 : 0;
        }

        return new PlainScore
        {
            Name = kind.Name,
            Captures = captures,
            Errors = [.. errors.Order()],
            Uncertainty = [.. uncertainty.Order()],
            Covered = covered / Math.Max(1.0, errors.Count),
            CyclesRight = right / Math.Max(1.0, errors.Count),
        };
    }
}
