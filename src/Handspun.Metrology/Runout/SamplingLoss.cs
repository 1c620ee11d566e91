namespace Handspun.Metrology.Runout;

/// <summary>What a highest-minus-lowest reading may miss because no reading falls on the peak.</summary>
public static class SamplingLoss
{
    /// <summary>The largest share of a wave's full movement that lies between readings: 1 − cos(π/n) with n even readings to each wave.</summary>
    /// <param name="readingsPerTurn">Readings a turn; at least 2 to each lobe, or all of it may be missed.</param>
    /// <param name="lobes">Waves a turn; at least 1.</param>
    /// <returns>0 to 1. The fitted profile is not cut short by this; a peak too narrow for its waves is.</returns>
    public static double Of(double readingsPerTurn, int lobes = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lobes, 1);
        var perWave = readingsPerTurn / lobes;
        return perWave > 2 ? 1 - Math.Cos(Math.PI / perWave) : 1;
    }
}
