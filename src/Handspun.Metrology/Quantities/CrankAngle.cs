namespace Handspun.Metrology.Quantities;

/// <summary>An angle of the crankshaft, or a difference of two.</summary>
/// <remarks>Always finite; whole turns count. The crank turns twice for one turn of the cam. The default is zero.</remarks>
public readonly record struct CrankAngle
{
    private CrankAngle(double degrees) => Degrees = degrees;

    /// <summary>Degrees of the crank.</summary>
    public double Degrees { get; }

    /// <summary>An angle given in degrees of the crank.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static CrankAngle FromDegrees(double value) => double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "An angle is a finite number.");

    /// <summary>The same in degrees of the cam: half as many.</summary>
    public CamAngle AtCam() => CamAngle.FromDegrees(Degrees / 2);

    /// <summary>The direction without whole turns of the crank, 0 ≤ a &lt; 360.</summary>
    public CrankAngle WithinTurn() => new(Angle.FromDegrees(Degrees).Degrees);

    /// <summary>The direction the short way round, −180 ≤ a &lt; 180: before zero is negative.</summary>
    public CrankAngle ShortWay() => new(Angle.FromDegrees(Degrees + 180).Degrees - 180);

    /// <summary>The sum of two angles of the crank.</summary>
    public static CrankAngle operator +(CrankAngle left, CrankAngle right) => new(left.Degrees + right.Degrees);

    /// <summary>The difference of two angles of the crank.</summary>
    public static CrankAngle operator -(CrankAngle left, CrankAngle right) => new(left.Degrees - right.Degrees);
}
