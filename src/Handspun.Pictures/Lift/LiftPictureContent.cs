using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.Readings;

namespace Handspun.Pictures.Lift;

/// <summary>What the picture of one lift record is drawn from.</summary>
public sealed record LiftPictureContent : ReadingsContent
{
    /// <summary>What was found in the readings.</summary>
    public required LiftResult Result { get; init; }

    /// <summary>Top dead centre from the same reference; null where it is not known.</summary>
    public Measured<CrankAngle>? Top { get; init; }

    internal void Check()
    {
        Check(Result.Rejected.Select(left => left.Reading));
        if (Result.Status == LiftStatus.Measured && (Result.LobeLift is null || Result.CurveMillimetres.Count != Lobe.Places))
        {
            throw new ArgumentException("A measured lift comes with its value and a curve of a whole turn.");
        }

        if (Result.AngleDegrees.Count != 0 && Result.AngleDegrees.Count != Seconds.Length)
        {
            throw new ArgumentException($"There are {Result.AngleDegrees.Count} angles for {Seconds.Length} readings.");
        }
    }
}
