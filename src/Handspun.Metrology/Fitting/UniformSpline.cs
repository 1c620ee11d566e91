namespace Handspun.Metrology.Fitting;

/// <summary>The basis of a cubic B-spline on evenly spaced knots.</summary>
/// <param name="Start">Where the first interval begins.</param>
/// <param name="Spacing">Length of an interval; above 0.</param>
/// <param name="Intervals">How many intervals; at least 1.</param>
internal readonly record struct UniformSpline(double Start, double Spacing, int Intervals)
{
    /// <summary>Coefficients, three more than intervals.</summary>
    public int Coefficients => Intervals + 3;

    /// <summary>The four basis values at a place, and the first coefficient they belong to. A place outside counts as the nearest end.</summary>
    public int Basis(double at, Span<double> values)
    {
        var (first, u) = Locate(at);
        var v = 1 - u;
        values[0] = v * v * v / 6;
        values[1] = (3 * u * u * u - 6 * u * u + 4) / 6;
        values[2] = (3 * v * v * v - 6 * v * v + 4) / 6;
        values[3] = u * u * u / 6;
        return first;
    }

    /// <summary>The value of the spline at a place.</summary>
    public double At(double at, ReadOnlySpan<double> coefficients)
    {
        Span<double> b = stackalloc double[4];
        var first = Basis(at, b);
        return b[0] * coefficients[first] + b[1] * coefficients[first + 1] + b[2] * coefficients[first + 2] + b[3] * coefficients[first + 3];
    }

    private (int First, double Within) Locate(double at)
    {
        var place = Math.Clamp((at - Start) / Spacing, 0, Intervals);
        var first = Math.Min((int)place, Intervals - 1);
        return (first, place - first);
    }
}
