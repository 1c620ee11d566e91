using Handspun.Jobs.Lengths;
using ScottPlot;

namespace Handspun.Pictures.Runout;

/// <summary>The readings of one turn over the angle.</summary>
/// <param name="Number">Which turn of the capture it is, from 1.</param>
/// <param name="Points">Degrees from the reference, 0 to 360, and height above the low spot in the unit shown.</param>
internal sealed record TurnReadings(int Number, IReadOnlyList<Coordinates> Points);

/// <summary>A measured profile and the turns it was found from, as heights above its low spot: the height of the high spot is the runout.</summary>
/// <param name="Curve">The fitted profile, 0 to 360 degrees.</param>
/// <param name="High">The high spot.</param>
/// <param name="Low">The low spot, at height zero.</param>
/// <param name="Turns">Every turn's readings, the drift taken out and without those that were left out.</param>
internal sealed record TurnedProfile(IReadOnlyList<Coordinates> Curve, Coordinates High, Coordinates Low, IReadOnlyList<TurnReadings> Turns)
{
    public static TurnedProfile Of(RunoutPictureContent content)
    {
        var profile = content.Result.Profile!;
        var heights = Enumerable.Range(0, 721).Select(half => (Degrees: half / 2.0, Height: profile.At(half / 2.0))).ToArray();
        var lowSpot = content.Result.LowSpot?.Degrees ?? heights.MinBy(at => at.Height).Degrees;
        var highSpot = content.Result.HighSpot?.Degrees ?? heights.MaxBy(at => at.Height).Degrees;
        var low = Math.Min(profile.At(lowSpot), heights.Min(at => at.Height));
        Coordinates Place(double degrees, double millimetres) => new(degrees, LengthText.InUnit(millimetres - low, content.Unit));

        return new(
            [.. heights.Select(at => Place(at.Degrees, at.Height))],
            Place(highSpot, profile.At(highSpot)),
            Place(lowSpot, profile.At(lowSpot)),
            Overlay(content, Place));
    }

    private static List<TurnReadings> Overlay(RunoutPictureContent content, Func<double, double, Coordinates> place)
    {
        var (angles, drifts) = (content.Result.AngleDegrees, content.Result.DriftMillimetres);
        var leftOut = content.Result.Rejected.Select(left => left.Reading).ToHashSet();
        var turns = new SortedDictionary<double, List<Coordinates>>();
        for (var i = 0; i < angles.Count; i++)
        {
            var height = content.Millimetres.Span[i] - (drifts.Count == 0 ? 0 : drifts[i]);
            if (!double.IsFinite(angles[i]) || !double.IsFinite(height) || leftOut.Contains(i))
            {
                continue;
            }

            var turn = Math.Floor(angles[i] / 360);
            if (!turns.TryGetValue(turn, out var points))
            {
                turns.Add(turn, points = []);
            }

            points.Add(place(angles[i] - 360 * turn, height));
        }

        var first = Math.Floor(angles.FirstOrDefault(double.IsFinite) / 360);   // counted from there over time, too
        return [.. turns.Select(turn => new TurnReadings((int)(turn.Key - first) + 1, turn.Value))];
    }
}
