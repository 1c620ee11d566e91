using System.Globalization;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Reckonings;

/// <summary>Tells a length that cannot be from one that can, and inches that were typed for millimetres.</summary>
internal static class PlausibleLength
{
    /// <summary>What is wrong with a typed length and what to do; null where it can be.</summary>
    /// <param name="what">What it is, with its article: <c>an installed height</c>.</param>
    /// <param name="length">What was typed.</param>
    /// <param name="least">The least that can be, in millimetres.</param>
    /// <param name="most">The most that can be.</param>
    public static string? Fault(string what, Measured<Length> length, double least, double most)
    {
        var millimetres = length.Value.Millimetres;
        if (length.U95 < Length.Zero)
        {
            return $"The uncertainty of {what} must be 0 or more: take the tool's division.";
        }

        if (millimetres >= least && millimetres <= most)
        {
            return null;
        }

        var shown = millimetres.ToString("0.###", CultureInfo.InvariantCulture);
        return millimetres * Length.MillimetresPerInch >= least && millimetres * Length.MillimetresPerInch <= most
            ? $"It was typed that {what} is {shown} mm, which looks like inches: choose inches, or type millimetres."
            : string.Create(CultureInfo.InvariantCulture, $"It was typed that {what} is {shown} mm, and it lies between {least:0.#} and {most:0.#} mm on such engines: measure and type it again.");
    }
}
