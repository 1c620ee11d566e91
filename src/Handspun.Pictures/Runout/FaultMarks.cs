using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout.Faults;
using Handspun.Pictures.Page;
using Handspun.Pictures.Scales;
using ScottPlot;

namespace Handspun.Pictures.Runout;

/// <summary>Narrow places that came back every turn: a heavy arc each on the rim of the circle, and a line of words.</summary>
internal static class FaultMarks
{
    private const double Rim = 1.02;
    private const double NarrowestArc = 7;   // degrees; a narrower one would not be seen
    private const int MostInWords = 4;
    private static readonly LineStyle Arc = new(5, Ink.Plot(Ink.LeftOut));

    /// <summary>Adds the arcs to a circle whose outermost ring has the radius 1, zero at the top, clockwise.</summary>
    public static void AddTo(Plot plot, IReadOnlyList<LocalFault> faults)
    {
        foreach (var fault in faults)
        {
            var half = Math.Max(fault.WidthDegrees, NarrowestArc) / 2;
            var arc = plot.Add.ScatterLine(Enumerable.Range(-8, 17).Select(i => At(fault.At.Degrees + half * i / 8)).ToArray());
            arc.LineStyle = Arc;
        }
    }

    /// <summary>A line for each, the first few of them.</summary>
    public static IEnumerable<string> InWords(IReadOnlyList<LocalFault> faults, LengthUnit unit)
    {
        foreach (var fault in faults.Take(MostInWords))
        {
            var height = LengthText.Of(Length.FromMillimetres(Math.Abs(fault.Height.Millimetres)), unit);
            var way = fault.Height > Length.Zero ? "high" : "deep";
            yield return $"Heavy arc at {Wording.Degrees(fault.At.Degrees)}: {height} {way}, {Digits.Of(fault.WidthDegrees, 0)}° wide, on {fault.Turns} of {fault.TurnsLooked} turns. {fault.Sentence}";
        }

        if (faults.Count > MostInWords)
        {
            yield return $"{faults.Count - MostInWords} more heavy arcs: the record lists them.";
        }
    }

    private static Coordinates At(double degrees)
    {
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        return new(Rim * sine, Rim * cosine);
    }
}
