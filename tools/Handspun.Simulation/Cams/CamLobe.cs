namespace Handspun.Simulation.Cams;

/// <summary>One lobe of a simulated cam; all angles are degrees of the cam.</summary>
public sealed record CamLobe
{
    /// <summary>Height of the nose above the base circle, in millimetres; above 0.</summary>
    public double LiftMillimetres { get; init; } = 9;

    /// <summary>Where the middle of the nose is, in degrees of the cam.</summary>
    public double CentrelineDegrees { get; init; }

    /// <summary>From the end of the base circle to the nose; above 0.</summary>
    public double OpeningDegrees { get; init; } = 75;

    /// <summary>From the nose to the base circle; above 0.</summary>
    public double ClosingDegrees { get; init; } = 75;

    /// <summary>How long the lift rests at the top; 0 or more.</summary>
    public double NoseDegrees { get; init; }

    /// <summary>How the flanks rise.</summary>
    public FlankLaw Law { get; init; } = FlankLaw.Polynomial;

    /// <summary>Full indicator movement of the base circle, in millimetres: the cam turns off centre.</summary>
    public double BaseRunoutMillimetres { get; init; }

    /// <summary>Where the off-centre base circle is highest.</summary>
    public double BaseHighDegrees { get; init; }

    /// <summary>Height above the base circle at an angle of the cam, in millimetres; the off-centre turning is not in it.</summary>
    public double LiftAt(double camDegrees)
    {
        var from = camDegrees - CentrelineDegrees;
        from -= 360 * Math.Round(from / 360);
        var flank = from < 0 ? OpeningDegrees : ClosingDegrees;
        return LiftMillimetres * Rise(1 - Math.Max(0, Math.Abs(from) - NoseDegrees / 2) / flank);
    }

    /// <summary>What an indicator on the tappet follows, in millimetres.</summary>
    public double HeightAt(double camDegrees) =>
        LiftAt(camDegrees) + BaseRunoutMillimetres / 2 * Math.Cos((camDegrees - BaseHighDegrees) * Math.PI / 180);

    /// <summary>Where the lift rises through a height, in degrees of the cam, less than 180 before the centreline.</summary>
    public double OpensAt(double millimetres) => CentrelineDegrees - NoseDegrees / 2 - OpeningDegrees * (1 - Reached(millimetres));

    /// <summary>Where the lift falls through a height, in degrees of the cam, less than 180 after the centreline.</summary>
    public double ClosesAt(double millimetres) => CentrelineDegrees + NoseDegrees / 2 + ClosingDegrees * (1 - Reached(millimetres));

    /// <summary>Midway between the two places at which the lift is so far below its top.</summary>
    public double MiddleBelow(double millimetres) => (OpensAt(LiftMillimetres - millimetres) + ClosesAt(LiftMillimetres - millimetres)) / 2;

    private double Rise(double x) => x <= 0 ? 0 : x >= 1 ? 1 : Law switch
    {
        FlankLaw.Harmonic => (1 - Math.Cos(Math.PI * x)) / 2,
        FlankLaw.Cycloidal => x - Math.Sin(2 * Math.PI * x) / (2 * Math.PI),
        _ => x * x * x * (10 - 15 * x + 6 * x * x),
    };

    // The part of the flank at which a height is reached; the flank only rises, so halving finds it.
    private double Reached(double millimetres)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = LiftMillimetres * Rise(middle) < millimetres ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
