using System.Globalization;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Fits;

/// <summary>How a body sits in its bore.</summary>
public enum FitKind
{
    /// <summary>The bore is larger, by more than the uncertainty.</summary>
    Clearance,

    /// <summary>The difference is smaller than its uncertainty.</summary>
    TooCloseToTell,

    /// <summary>The body is larger, by more than the uncertainty.</summary>
    Interference,
}

/// <summary>The clearance of a body in its bore: bore less body.</summary>
/// <param name="Size">The clearance; negative where the body is larger than the bore.</param>
/// <param name="U95">Its expanded uncertainty (k = 2).</param>
/// <param name="Kind">What may be said of it.</param>
/// <param name="Sentence">The same in words, with what to do where it cannot be right.</param>
public sealed record Clearance(Length Size, Length U95, FitKind Kind, string Sentence)
{
    /// <summary>The clearance of two sizes that were measured apart, so that their uncertainties add as squares (JCGM 100:2008, 5.1.2).</summary>
    public static Clearance Of(MeasuredSize bore, MeasuredSize body)
    {
        var size = bore.Size - body.Size;
        var expanded = Length.FromMillimetres(Math.Sqrt(bore.U95.Millimetres * bore.U95.Millimetres + body.U95.Millimetres * body.U95.Millimetres));
        var kind = size > expanded ? FitKind.Clearance : size + expanded < Length.Zero ? FitKind.Interference : FitKind.TooCloseToTell;
        return new(size, expanded, kind, Words(size, kind));
    }

    /// <summary>Holds the clearance against a limit (ISO 14253-1).</summary>
    public ConformityDecision Against(Tolerance tolerance) => ConformityRule.Decide(Size, U95, tolerance);

    private static string Words(Length size, FitKind kind) => kind switch
    {
        FitKind.Clearance => string.Create(CultureInfo.InvariantCulture, $"Clearance {size.Millimetres:0.0000} mm ({size.Inches:0.00000} in)."),
        FitKind.Interference => string.Create(CultureInfo.InvariantCulture, $"The body is larger than the bore by {-size.Millimetres:0.0000} mm ({-size.Inches:0.00000} in), an interference: check that both sizes belong together and are in the same unit, and measure both again before anything is pressed in."),
        _ => "Bore and body are so nearly the same size that the measurement cannot tell clearance from interference: measure both again with a finer gauge.",
    };
}
