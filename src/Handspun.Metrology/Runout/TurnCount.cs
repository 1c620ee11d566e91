namespace Handspun.Metrology.Runout;

/// <summary>Whether the readings alone tell how many turns they cover.</summary>
internal static class TurnCount
{
    private const double Odd = 0.35;
    private const double Plain = 0.1;

    /// <summary>Whether half or double the count would explain the readings about as well.</summary>
    /// <remarks>
    /// A shape whose even waves outweigh the odd ones nearly repeats in half a turn. A plain wave with nothing else in it
    /// is the same whether it comes once a turn or twice.
    /// </remarks>
    public static bool IsAmbiguous(ProfileFit fit)
    {
        var (odd, even, beyondFirst) = (0.0, 0.0, 0.0);
        for (var k = 1; k <= fit.Harmonics; k++)
        {
            var power = fit.Series[2 * k - 1] * fit.Series[2 * k - 1] + fit.Series[2 * k] * fit.Series[2 * k];
            odd += k % 2 == 1 ? power : 0;
            even += k % 2 == 0 ? power : 0;
            beyondFirst += k > 1 ? power : 0;
        }

        return odd < Odd * Odd * even || beyondFirst < Plain * Plain * odd;
    }
}
