using Handspun.Metrology.Bore;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.Readings;

namespace Handspun.Pictures.Bore;

/// <summary>What the picture of one bore record is drawn from.</summary>
public sealed record BorePictureContent : ReadingsContent
{
    /// <summary>What was found in the readings.</summary>
    public required BoreResult Result { get; init; }

    /// <summary>Whether the reading falls when the gauge spans more.</summary>
    public bool LargerReadsLower { get; init; }

    /// <summary>Where in the bore it was, in words; null where that was not said.</summary>
    public string? Place { get; init; }

    /// <summary>Whether the reading turns back from its highest: in a bore where more reads lower, on a body where it reads higher.</summary>
    internal bool TurnsAtTheTop => LargerReadsLower != Result.Outside;

    /// <summary>The size where it is known, else the deviation; null where there is no result.</summary>
    internal (Length Value, Length? U95)? Value => Result switch
    {
        { Status: not BoreStatus.Measured } => null,
        { Size: { } size } => (size, Result.SizeU95),
        { Deviation: { } deviation } => (deviation, Result.DeviationU95),
        _ => null,
    };

    /// <summary>What one pass says of the same, in millimetres.</summary>
    internal double OfPass(BorePass pass)
    {
        var mean = Result.ByPass.Average(one => one.Millimetres);
        return Value!.Value.Value.Millimetres + (LargerReadsLower ? -1 : 1) * (pass.Millimetres - mean);
    }

    internal void Check()
    {
        Check(Result.Knocks.Concat(Result.ByPass.Select(pass => pass.Reading)));
        if (Result.Status == BoreStatus.Measured && (Result.Deviation is null || Result.ByPass.Count == 0))
        {
            throw new ArgumentException("A measured bore comes with its deviation and its passes.");
        }
    }
}
