using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Bore;

/// <summary>The unknowns of a rocked gauge and where each stands in their list.</summary>
/// <remarks>
/// The reading is the bore's, plus a steady creep of the stand, plus how the gauge sat in this pass, plus the square of the
/// lean: a gauge that leans by an angle spans the diameter over its cosine, and for small angles that is the diameter and a
/// square. The lean is a smooth curve of time that goes through zero once a pass.
/// </remarks>
internal sealed class RockModel
{
    private readonly double _middle;
    private readonly double _half;

    /// <summary>A model for readings from a time to another with so many passes.</summary>
    /// <param name="from">First time, in seconds.</param>
    /// <param name="to">Last time.</param>
    /// <param name="passes">Passes.</param>
    /// <param name="knots">Spline intervals a pass; above 0.</param>
    /// <param name="usualPass">Usual time from pass to pass, in seconds.</param>
    public RockModel(double from, double to, int passes, double knots, double usualPass)
    {
        (_middle, _half) = ((from + to) / 2, Math.Max(1e-9, (to - from) / 2));
        Passes = passes;
        var intervals = (int)Math.Clamp(Math.Ceiling((to - from) / usualPass * knots), 2, 40 + knots * 2 * passes);
        Lean = new(from, (to - from) / intervals, intervals);
    }

    /// <summary>Passes.</summary>
    public int Passes { get; }

    /// <summary>The lean's spline; its values are square roots of millimetres.</summary>
    public UniformSpline Lean { get; }

    /// <summary>How many unknowns there are.</summary>
    public int Unknowns => 2 + Passes + Lean.Coefficients;

    /// <summary>The place of the bore's reading.</summary>
    public static int Bore => 0;

    /// <summary>The place of the creep over half the capture.</summary>
    public static int Creep => 1;

    /// <summary>The place of how the gauge sat in a pass.</summary>
    public static int Seat(int pass) => 2 + pass;

    /// <summary>The place of the first of the spline's coefficients.</summary>
    public int FirstLean => 2 + Passes;

    /// <summary>A time as the creep sees it, from −1 to 1.</summary>
    public double Part(double seconds) => (seconds - _middle) / _half;

    /// <summary>The lean's coefficients among all unknowns.</summary>
    public ReadOnlySpan<double> LeanOf(double[] unknowns) => unknowns.AsSpan(FirstLean);
}
