namespace Handspun.Metrology.Lift;

/// <summary>How the angle became known.</summary>
/// <param name="Told">What told it.</param>
/// <param name="Shaft">Of which shaft.</param>
/// <param name="CamTurns">Turns of the cam in one turn of that shaft: a half or one.</param>
/// <param name="Assumed">Whether the shaft was neither said nor seen.</param>
internal sealed record AngleBasis(AngleTold Told, AngleShaft Shaft, double CamTurns, bool Assumed)
{
    private const double SeldomPerCamTurn = 10;
    private const double OncePerCamTurn = 3;

    // A hand that speeds up or slows down between two angles that are told is off an even course by a share of the way that
    // grows with the way itself (found by simulation of hands).
    private const double HandDoubt = 0.22;

    /// <summary>Whether the angle was told at so few places of the turn that the hand decides in between.</summary>
    public bool IsSeldom => PerCamTurn < SeldomPerCamTurn;

    /// <summary>Whether it was told so seldom that the angle is only known to some twenty degrees in between.</summary>
    public bool IsOnceATurn => PerCamTurn < OncePerCamTurn;

    /// <summary>Variance of an angle between two that are told, beside what the fit knows of; square turns of the cam.</summary>
    /// <param name="unevenness">The spread of the hand's speed over its mean.</param>
    public double HandVariance(double unevenness)
    {
        var apart = 1 / Math.Max(1e-3, PerCamTurn);
        return Math.Pow(HandDoubt * unevenness * apart * Math.Min(1, 2 * apart), 2);
    }

    /// <summary>Variance of zero, square turns of the cam.</summary>
    public double ZeroVariance => Math.Pow(Told.ZeroDoubt * CamTurns, 2);

    private double PerCamTurn => Told.PerTurn / CamTurns;
}
