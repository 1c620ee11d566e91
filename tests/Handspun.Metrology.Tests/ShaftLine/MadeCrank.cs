using Handspun.Metrology.Quantities;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Metrology.Tests.ShaftLine;

/// <summary>A crank put together in space: two stiff flywheels with their shafts, moved about the crankpin, then hung in two bearings.</summary>
internal sealed record MadeCrank
{
    private const double Throw = 50;

    /// <summary>By how much the flywheels stand open opposite the crankpin, in radians.</summary>
    public double Open { get; init; }

    /// <summary>By how much the pinion side's flywheel is turned about the crankpin, in radians.</summary>
    public double Turned { get; init; }

    /// <summary>By how much the flywheels lean against each other about the crank throw, in radians.</summary>
    public double Lean { get; init; }

    /// <summary>By how much longer the pinion side's throw is, in millimetres.</summary>
    public double Longer { get; init; }

    /// <summary>Where the crankpin stands from the mark, in degrees.</summary>
    public double Crankpin { get; init; }

    public double Between { get; init; } = 120;

    public double DriveOut { get; init; } = 60;

    public double PinionOut { get; init; } = 40;

    /// <summary>What indicators at both ends would give, with an uncertainty too small to matter.</summary>
    public CrankRunout Measure(double angleU95 = 1) => new(
        End(-1, DriveOut, angleU95), End(1, PinionOut, angleU95), Mm(Between), Mm(0.1), Angle.FromDegrees(Crankpin), angleU95);

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private EndRunout End(int side, double outward, double angleU95)
    {
        var (one, other) = (Place(-1, Between / 2), Place(1, Between / 2));
        var axis = Unit(Minus(other, one));
        var arm = Minus(Place(side, Between / 2 + outward), one);
        var along = arm.X * axis.X + arm.Y * axis.Y + arm.Z * axis.Z;
        var (ex, ey) = (arm.X - along * axis.X, arm.Y - along * axis.Y);
        return new(
            Mm(Math.Sqrt(ex * ex + ey * ey)), Mm(1e-6), Angle.FromDegrees(Math.Atan2(ey, ex) * 180 / Math.PI + Crankpin), angleU95, Mm(outward), Mm(0.1));
    }

    // A point of a shaft, so far out from the middle. The crankpin stands along z at x = Throw.
    private (double X, double Y, double Z) Place(int side, double outward)
    {
        var (x, y, z) = (side > 0 ? -Throw - Longer : -Throw, 0.0, side * outward);
        (x, z) = Rotate(x, z, side * Open / 2);
        (y, z) = Rotate(y, z, side * Lean / 2);
        (x, y) = side > 0 ? Rotate(x, y, -Turned) : (x, y);
        return (x + Throw, y, z);
    }

    // The first axis gains what the second has: a point far out along z moves toward the first axis.
    private static (double A, double B) Rotate(double a, double b, double angle) =>
        (a * Math.Cos(angle) + b * Math.Sin(angle), b * Math.Cos(angle) - a * Math.Sin(angle));

    private static (double X, double Y, double Z) Minus((double X, double Y, double Z) a, (double X, double Y, double Z) b) => (a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    private static (double X, double Y, double Z) Unit((double X, double Y, double Z) v)
    {
        var length = Math.Sqrt(v.X * v.X + v.Y * v.Y + v.Z * v.Z);
        return (v.X / length, v.Y / length, v.Z / length);
    }
}
