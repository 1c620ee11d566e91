using Handspun.Metrology.Decision;

namespace Handspun.Metrology.Lift;

/// <summary>One line of a cam card beside what was measured; degrees of the crank, or of the cam where <see cref="OfCam"/>.</summary>
/// <param name="What">What the line is, in words.</param>
/// <param name="OfCam">Whether the degrees are of the cam.</param>
/// <param name="CardDegrees">What the card says.</param>
/// <param name="MeasuredDegrees">What was measured.</param>
/// <param name="U95Degrees">Expanded uncertainty of the measured (k = 2).</param>
/// <param name="Verdict">Within the allowed difference, over it, or too close to call (ISO 14253-1).</param>
public readonly record struct CardDifference(string What, bool OfCam, double CardDegrees, double MeasuredDegrees, double U95Degrees, Verdict Verdict)
{
    /// <summary>Measured minus card.</summary>
    public double Degrees => MeasuredDegrees - CardDegrees;

    /// <summary>One plain sentence.</summary>
    public string Sentence => $"{What}: card {CardDegrees:0.0}°, measured {MeasuredDegrees:0.0}° ± {U95Degrees:0.0}° of the {(OfCam ? "cam" : "crank")}, {Word(Degrees)}; {Judged}.";

    private string Judged => Verdict switch
    {
        Verdict.Within => "as the card says",
        Verdict.Over => "not as the card says",
        _ => "too close to call",
    };

    private static string Word(double degrees) => degrees switch
    {
        > 0.05 => $"{degrees:0.0}° more",
        < -0.05 => $"{-degrees:0.0}° less",
        _ => "no difference",
    };
}
