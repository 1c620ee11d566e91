using Handspun.Metrology.EndPlay;
using Handspun.Pictures.Readings;

namespace Handspun.Pictures.EndPlay;

/// <summary>What the picture of one end play record is drawn from.</summary>
public sealed record EndPlayPictureContent : ReadingsContent
{
    /// <summary>What was found in the readings.</summary>
    public required EndPlayResult Result { get; init; }

    internal void Check()
    {
        Check(Result.Knocks.Concat(Result.Holds.SelectMany(hold => new[] { hold.FirstReading, hold.LastReading })));
        if (Result.Status == EndPlayStatus.Measured && (Result.EndPlay is null || Result.StopsAtHolds.Count != Result.Holds.Count))
        {
            throw new ArgumentException("A measured end play comes with its value and with the stops at each hold.");
        }
    }
}
