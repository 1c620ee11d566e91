using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Reckonings;

/// <summary>One length less others, worked out.</summary>
internal static class LengthSum
{
    /// <summary>The first less all that follow; independent doubts add as squares (JCGM 100:2008, 5.1.2).</summary>
    public static Worked Difference(string formula, Measured<Length> first, params Measured<Length>[] less)
    {
        var result = less.Aggregate(first.Value, (sum, one) => sum - one.Value);
        var variance = less.Append(first).Sum(one => one.U95.Millimetres * one.U95.Millimetres);
        return new()
        {
            Formula = formula,
            Pattern = string.Join(" − ", Enumerable.Range(0, less.Length + 1).Select(place => $"{{{place}}}")),
            Numbers = [.. less.Prepend(first).Select(one => WorkedNumber.Of(one.Value))],
            Result = WorkedNumber.Of(result),
            U95 = WorkedNumber.Of(Length.FromMillimetres(Math.Sqrt(variance))),
        };
    }
}
