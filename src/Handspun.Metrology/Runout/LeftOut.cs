namespace Handspun.Metrology.Runout;

/// <summary>Readings that a fit left out several in a row.</summary>
internal static class LeftOut
{
    /// <summary>The share above which a fit is not believed as it stands.</summary>
    public const double Most = 0.03;

    /// <summary>The share of readings left out next to another. A knock is one reading; a row of them is a fit that does not follow the shaft.</summary>
    public static double InRows(double[] weights)
    {
        var count = 0;
        for (var i = 1; i < weights.Length; i++)
        {
            count += weights[i] == 0 && weights[i - 1] == 0 ? 1 : 0;
        }

        return (double)count / Math.Max(1, weights.Length);
    }

    /// <summary>How much wider the doubt of such a fit is: 1 up to the share allowed, then growing (5 where a fifth is left out; found by simulation).</summary>
    public static double Widening(double[] weights)
    {
        var share = InRows(weights);
        return share > Most ? 1 + 20 * share : 1;
    }
}
