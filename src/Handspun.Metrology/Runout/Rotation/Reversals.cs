namespace Handspun.Metrology.Runout.Rotation;

/// <summary>A place where the readings turn from rising to falling or back.</summary>
internal readonly record struct Reversal(int Reading, double Millimetres);

/// <summary>Where the readings turn. Their values do not depend on how fast or unevenly the shaft turned, so their pattern counts turns.</summary>
internal static class Reversals
{
    /// <summary>Turning points that stand out from their neighbours by more than a threshold, in order, highs and lows by turns.</summary>
    public static List<Reversal> Find(ReadOnlySpan<double> millimetres, double threshold)
    {
        List<Reversal> found = [];
        var (low, high, way) = (0, 0, 0);
        for (var i = 1; i < millimetres.Length; i++)
        {
            low = millimetres[i] < millimetres[low] ? i : low;
            high = millimetres[i] > millimetres[high] ? i : high;
            if (way >= 0 && millimetres[high] - millimetres[i] > threshold)
            {
                AddUnlessStart(found, millimetres, high, threshold);
                (low, way) = (i, -1);
                high = i;
            }
            else if (way <= 0 && millimetres[i] - millimetres[low] > threshold)
            {
                AddUnlessStart(found, millimetres, low, threshold);
                (high, way) = (i, 1);
                low = i;
            }
        }

        return found;
    }

    // Where the capture begins, the readings may only fall or rise, and noise makes that look like a turning point.
    private static void AddUnlessStart(List<Reversal> found, ReadOnlySpan<double> millimetres, int reading, double threshold)
    {
        if (found.Count > 0 || Math.Abs(millimetres[reading] - millimetres[0]) > 0.3 * threshold)
        {
            found.Add(new(reading, millimetres[reading]));
        }
    }
}
