namespace Handspun.Metrology.Fitting;

/// <summary>Readings and angle anchors laid on the spline that is to carry the angle; the same for every fit to one capture.</summary>
internal sealed class FitGrid
{
    /// <summary>Lays readings and anchors on a spline.</summary>
    public FitGrid(double[] seconds, double[] millimetres, IReadOnlyList<AngleAnchor> anchors, UniformSpline spline, double noiseFloor)
    {
        (Seconds, Millimetres, Anchors, Spline, NoiseFloor) = (seconds, millimetres, anchors, spline, noiseFloor);
        (First, Basis) = Lay(seconds);
        (AnchorFirst, AnchorBasis) = Lay([.. anchors.Select(anchor => anchor.Seconds)]);
        var (low, high) = (double.MaxValue, double.MinValue);
        foreach (var value in millimetres)
        {
            (low, high) = (Math.Min(low, value), Math.Max(high, value));
        }

        Range = high - low;
        var length = seconds[^1] - seconds[0];
        Course = Array.ConvertAll(seconds, at => length > 0 ? 2 * (at - seconds[0]) / length - 1 : 0);
        Shares = new double[seconds.Length];
        Array.Fill(Shares, 1);
    }

    /// <summary>When each reading was taken.</summary>
    public double[] Seconds { get; }

    /// <summary>The readings.</summary>
    public double[] Millimetres { get; }

    /// <summary>How much each reading counts, 0 to 1, whatever its residual.</summary>
    public double[] Shares { get; }

    /// <summary>What told the angle; empty where nothing did.</summary>
    public IReadOnlyList<AngleAnchor> Anchors { get; }

    /// <summary>The spline that carries the angle over time.</summary>
    public UniformSpline Spline { get; }

    /// <summary>The least standard deviation that residuals may be given, in millimetres: the gauge's step sets it.</summary>
    public double NoiseFloor { get; }

    /// <summary>Highest minus lowest reading.</summary>
    public double Range { get; }

    /// <summary>The first of each reading's four coefficients.</summary>
    public int[] First { get; }

    /// <summary>Each reading's four basis values.</summary>
    public double[] Basis { get; }

    /// <summary>The first of each anchor's four coefficients.</summary>
    public int[] AnchorFirst { get; }

    /// <summary>Each anchor's four basis values.</summary>
    public double[] AnchorBasis { get; }

    /// <summary>Time of each reading from −1 at the first to 1 at the last, on which drift is a polynomial.</summary>
    public double[] Course { get; }

    private (int[] First, double[] Basis) Lay(double[] seconds)
    {
        var first = new int[seconds.Length];
        var basis = new double[4 * seconds.Length];
        for (var i = 0; i < seconds.Length; i++)
        {
            first[i] = Spline.Basis(seconds[i], basis.AsSpan(4 * i, 4));
        }

        return (first, basis);
    }
}
