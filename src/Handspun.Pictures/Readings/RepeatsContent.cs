using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Pictures.Readings;

/// <summary>What was found each time, what all of it says together, and what that is held against.</summary>
/// <param name="Title">Such as <c>Every cycle by itself</c>.</param>
/// <param name="One">What one of them is called, such as <c>cycle</c>.</param>
/// <param name="Name">What the result is called, such as <c>End play</c>.</param>
/// <param name="Each">What was found each time, in millimetres, in order.</param>
/// <param name="Value">The result.</param>
/// <param name="U95">Its expanded uncertainty; null where it is not known.</param>
/// <param name="Limit">The limit; null where there is none.</param>
/// <param name="Unit">The unit shown.</param>
/// <param name="FromZero">Whether the scale starts at zero; a size is drawn about itself.</param>
internal sealed record RepeatsContent(
    string Title, string One, string Name, IReadOnlyList<double> Each, Length Value, Length? U95, Tolerance? Limit, LengthUnit Unit, bool FromZero)
{
    private const double Room = 0.2;

    // From this many times what was found on, a limit would leave no room for what was found.
    private const double FarOff = 12;

    /// <summary>A length in millimetres as it is shown.</summary>
    public double Shown(double millimetres) => LengthText.InUnit(millimetres, Unit);

    /// <summary>The result as it is shown.</summary>
    public double ShownValue => Shown(Value.Millimetres);

    /// <summary>Its uncertainty as it is shown.</summary>
    public double ShownDoubt => Shown(U95?.Millimetres ?? 0);

    /// <summary>The lower bound, where the scale takes it in.</summary>
    public double? Lower => OnScale(Limit?.Lower);

    /// <summary>The upper bound, where the scale takes it in.</summary>
    public double? Upper => OnScale(Limit?.Upper);

    /// <summary>The lowest and the highest value of the scale.</summary>
    public (double Low, double High) Scale()
    {
        var (low, high) = Found();
        (low, high) = (Math.Min(low, Lower ?? low), Math.Max(high, Upper ?? high));
        var margin = Room * Math.Max(high - low, Unit.IsInch ? 0.0002 : 0.005);
        return FromZero ? (0, high + margin) : (low - margin, high + margin);
    }

    private (double Low, double High) Found()
    {
        double[] all = [.. Each.Select(Shown), ShownValue - ShownDoubt, ShownValue + ShownDoubt];
        return (FromZero ? 0 : all.Min(), all.Max());
    }

    private double? OnScale(Length? bound)
    {
        if (bound is not { } length)
        {
            return null;
        }

        var (low, high) = Found();
        var (at, span) = (Shown(length.Millimetres), Math.Max(high - low, Unit.IsInch ? 0.0002 : 0.005));
        return FromZero
            ? at <= 6 * high ? at : null
            : at > low - FarOff * span && at < high + FarOff * span ? at : null;
    }
}
