namespace Handspun.Metrology.Quantities;

/// <summary>An angle of the camshaft, or a difference of two.</summary>
/// <remarks>Always finite; whole turns count. The cam turns once for two turns of the crank, so one degree here is exactly two there. The default is zero.</remarks>
public readonly record struct CamAngle
{
    private CamAngle(double degrees) => Degrees = degrees;

    /// <summary>Degrees of the cam.</summary>
    public double Degrees { get; }

    /// <summary>An angle given in degrees of the cam.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static CamAngle FromDegrees(double value) => double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "An angle is a finite number.");

    /// <summary>The same in degrees of the crank: twice as many.</summary>
    public CrankAngle AtCrank() => CrankAngle.FromDegrees(2 * Degrees);

    /// <summary>The direction without whole turns of the cam, 0 ≤ a &lt; 360.</summary>
    public CamAngle WithinTurn() => new(Angle.FromDegrees(Degrees).Degrees);

    /// <summary>The sum of two angles of the cam.</summary>
    public static CamAngle operator +(CamAngle left, CamAngle right) => new(left.Degrees + right.Degrees);

    /// <summary>The difference of two angles of the cam.</summary>
    public static CamAngle operator -(CamAngle left, CamAngle right) => new(left.Degrees - right.Degrees);
}
