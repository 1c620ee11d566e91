using System.Globalization;
using Handspun.Jobs.Lengths;

namespace Handspun.Jobs.History;

/// <summary>Where a bike lies among others of its kind, in words.</summary>
public static class SpreadSentence
{
    /// <summary>Such as <c>12 other bikes: half of them at most 0.0021 in, the middle half 0.0015 in to 0.0030 in. 9 lie below this one, 3 above.</c></summary>
    public static string Of(KindSpread spread, LengthUnit unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"{spread.Bikes} other bikes: half of them at most {LengthText.Of(spread.Median, unit)}, the middle half {LengthText.Of(spread.LowerQuartile, unit)} to {LengthText.Of(spread.UpperQuartile, unit)}. {spread.Below} lie below this one, {spread.Above} above.");
}
