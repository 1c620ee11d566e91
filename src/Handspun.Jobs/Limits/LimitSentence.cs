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

    /// <summary>The conditions it is for, then its source and who stands by it, such as <c>service limit, chain drive; manual, page 7; confirmed by A. Nobody</c>.</summary>
    public static string All(Limit limit) => LimitCondition.InWords(limit) is { } condition ? $"{condition}; {Source(limit)}" : Source(limit);

    private static string Write(double millimetres, LengthUnit unit) => LengthText.Bound(Length.FromMillimetres(millimetres), unit);
}
