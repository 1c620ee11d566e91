using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Limits;

/// <summary>Limits in words.</summary>
public static class LimitSentence
{
    /// <summary>Such as <c>at most 0.0050 in</c>.</summary>
    public static string Bounds(Limit limit, LengthUnit unit) => (limit.LowerMillimetres, limit.UpperMillimetres) switch
    {
        ({ } lower, { } upper) => $"{Write(lower, unit)} to {Write(upper, unit)}",
        ({ } lower, null) => $"at least {Write(lower, unit)}",
        (null, { } upper) => $"at most {Write(upper, unit)}",
        _ => "no limit",
    };

    /// <summary>Where the limit comes from and whether somebody stands by it.</summary>
    public static string Source(Limit limit) => limit.ConfirmedBy is { } name
        ? $"{limit.Source}; confirmed by {name}"
        : $"{limit.Source}; nobody has confirmed it yet";

    private static string Write(double millimetres, LengthUnit unit) => LengthText.Of(Length.FromMillimetres(millimetres), unit);
}
