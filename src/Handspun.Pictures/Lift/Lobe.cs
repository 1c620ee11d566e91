using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;
using ScottPlot;

namespace Handspun.Pictures.Lift;

/// <summary>One lobe as it is drawn, over degrees of the crank.</summary>
/// <param name="Name">Such as <c>intake</c>.</param>
/// <param name="CurveMillimetres">Lift at each whole degree of the cam from the reference.</param>
/// <param name="Centre">Its centreline from the same reference.</param>
/// <param name="CentreAt">Where the centreline is drawn, in degrees of the crank.</param>
/// <param name="Opens">Where it opens at the checking lift, as drawn.</param>
/// <param name="Closes">Where it closes.</param>
public sealed record Lobe(string Name, IReadOnlyList<double> CurveMillimetres, CamAngle Centre, double CentreAt, double Opens, double Closes)
{
    /// <summary>Places of a curve: one a degree of the cam.</summary>
    public const int Places = 360;

    /// <summary>Where the card has it open, close and its centreline, as drawn; null where the card does not say.</summary>
    public CardMarks Card { get; init; }

    /// <summary>The curve from half a turn of the crank before the centreline to half a turn after it.</summary>
    internal IReadOnlyList<Coordinates> Points(LengthUnit unit) =>
    [
        .. Enumerable.Range(-180, 361).Select(crank => new Coordinates(CentreAt + crank, LengthText.InUnit(At(Centre.Degrees + crank / 2.0), unit))),
    ];

    private double At(double camDegrees)
    {
        var place = CamAngle.FromDegrees(camDegrees).WithinTurn().Degrees;
        var (from, part) = ((int)place, place - (int)place);
        return CurveMillimetres[from % Places] * (1 - part) + CurveMillimetres[(from + 1) % Places] * part;
    }
}

/// <summary>What a card says of one lobe, in degrees of the crank as they are drawn.</summary>
/// <param name="Opens">Where it opens; null where the card does not say.</param>
/// <param name="Closes">Where it closes.</param>
/// <param name="Centre">Its centreline.</param>
public readonly record struct CardMarks(double? Opens, double? Closes, double? Centre);
