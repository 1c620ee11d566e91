using Handspun.Jobs.Lengths;

namespace Handspun.Pictures.Runout;

/// <summary>The heights above the low spot that the picture shows, the same over the angle and about the circle.</summary>
/// <param name="Low">The lowest height shown; below zero where readings scatter below the low spot.</param>
/// <param name="High">The highest height shown.</param>
/// <param name="Runout">The height of the high spot.</param>
/// <param name="Uncertainty">How far the runout may be off, either way; 0 where that is not known.</param>
/// <param name="Limit">The limit, where there is one.</param>
internal sealed record HeightScale(double Low, double High, double Runout, double Uncertainty, LimitBand? Limit)
{
    private double _markedBeside;

    /// <summary>The highest of what is marked: the high spot, or a limit that the scale takes in; also in the picture beside it.</summary>
    public double HighestMarked => Math.Max(_markedBeside, Math.Max(Runout, Limit is { OffScale: false } limit ? Math.Max(limit.Lower ?? 0, limit.Upper ?? 0) : 0));

    /// <summary>The same marks on a scale that also takes in those of another picture.</summary>
    public HeightScale Beside(HeightScale other) =>
        this with { Low = Math.Min(Low, other.Low), High = Math.Max(High, other.High), _markedBeside = other.HighestMarked };

    public static HeightScale Of(RunoutPictureContent content, TurnedProfile profile)
    {
        var runout = LengthText.InUnit(content.Result.Tir!.Value.Millimetres, content.Unit);
        var uncertainty = LengthText.InUnit(content.Result.TirU95?.Millimetres ?? 0, content.Unit);
        var least = content.Unit.IsInch ? 0.0002 : 0.005;
        var movement = Math.Max(runout + uncertainty, least);
        var limit = LimitBand.Of(content.Limit, movement, content.Unit);

        var heights = profile.Turns.SelectMany(turn => turn.Points).Select(at => at.Y).Concat([0, profile.High.Y, movement]).ToArray();
        var (low, high) = (heights.Min(), heights.Max());
        if (limit is { OffScale: false })
        {
            high = Math.Max(high, Math.Max(limit.Lower ?? 0, limit.Upper ?? 0));
        }

        var span = high - low;
        return new(low - 0.15 * span, high + 0.17 * span, runout, uncertainty, limit);   // room for the names of the spots and the limit
    }
}
