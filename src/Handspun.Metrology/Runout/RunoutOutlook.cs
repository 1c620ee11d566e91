using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Runout;

/// <summary>Whether a capture that goes on has enough yet, and what stands in the way.</summary>
public sealed record RunoutOutlook
{
    /// <summary>Readings a turn that a hand should leave the gauge time for; with fewer, 3.4 % of the movement can hide between two readings.</summary>
    public const double FewestReadingsPerTurn = 12;

    /// <summary>Readings that one turn gets at the speed of now; 0 where it stands or the speed is not known.</summary>
    public double ReadingsPerTurn { get; init; }

    /// <summary>The largest peak that could hide between readings: 1 − cos(π/n) of the movement with n readings a turn, as many as the turns so far had; null before there is a runout.</summary>
    /// <remarks>For one lobe a turn. A narrower place, such as a burr, can hide whole.</remarks>
    public Length? HiddenPeak { get; init; }

    /// <summary>Seconds that a turn must take for this gauge, at least; null where the rate is not known.</summary>
    public double? LeastSecondsPerTurn { get; init; }

    /// <summary>Seconds until there are enough turns at the speed of now, 0 where there are; null where it stands.</summary>
    public double? SecondsToGo { get; init; }

    /// <summary>What makes the result so far less sure than it looks, or will; what only time can bring is not among it.</summary>
    public required IReadOnlyList<RunoutWarning> Warnings { get; init; }

    /// <summary>Whether the shaft turns faster than the gauge can follow.</summary>
    public bool IsTooFast => Warnings.Contains(RunoutWarning.TurningTooFast);

    /// <summary>What a look at a capture so far comes to.</summary>
    /// <param name="result">What the readings say so far.</param>
    /// <param name="readingsPerSecond">How often the gauge reads; 0 where it is not known yet.</param>
    /// <param name="turnsWanted">Turns that are enough.</param>
    public static RunoutOutlook Of(RunoutResult result, double readingsPerSecond, double turnsWanted)
    {
        ArgumentNullException.ThrowIfNull(result);
        var now = result.TurnsPerSecond > 0 ? readingsPerSecond / result.TurnsPerSecond : 0;
        var left = Math.Max(0, turnsWanted - result.Turns);
        var tooFast = now is > 0 and < FewestReadingsPerTurn;
        return new()
        {
            ReadingsPerTurn = now,
            HiddenPeak = result.Tir is { } tir ? Length.FromMillimetres(tir.Millimetres * SamplingLoss.Of(result.Readings / result.Turns)) : null,
            LeastSecondsPerTurn = readingsPerSecond > 0 ? FewestReadingsPerTurn / readingsPerSecond : null,
            SecondsToGo = left == 0 ? 0 : result.TurnsPerSecond > 0 ? left / result.TurnsPerSecond : null,
            Warnings =
            [
                .. tooFast ? [RunoutWarning.TurningTooFast] : Array.Empty<RunoutWarning>(),
                .. result.Warnings.Where(warning => warning != RunoutWarning.FewTurns),
            ],
        };
    }
}
