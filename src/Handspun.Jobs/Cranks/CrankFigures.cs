using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Jobs.Cranks;

/// <summary>Shaft lines in figures for a person, in the order to be shown.</summary>
public static class CrankFigures
{
    private static readonly Length HundredMillimetres = Length.FromMillimetres(100);
    private static readonly Length FourInches = Length.FromInches(4);

    /// <summary>Label and text, each with its expanded uncertainty.</summary>
    public static IEnumerable<Figure> Of(ShaftLineResult lines, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (lines is { DriveSide: { } drive, PinionSide: { } pinion })
        {
            yield return new("Drive side leans", Lean(drive.Tilt, drive.TiltU95, drive.Toward, unit));
            yield return new("Pinion side leans", Lean(pinion.Tilt, pinion.TiltU95, pinion.Toward, unit));
        }

        if (lines.Apart is { } apart)
        {
            yield return new("Lines at an angle of", Lean(apart.Kink, apart.KinkU95, apart.KinkToward, unit));
            yield return new("Lines offset by", LengthText.WithUncertainty(apart.Offset, apart.OffsetU95, unit) + Toward(apart.OffsetToward));
        }
    }

    private static string Lean(Slope slope, Slope u95, Angle? toward, LengthUnit unit)
    {
        var (along, words) = unit.IsInch ? (FourInches, "over 4 in") : (HundredMillimetres, "over 100 mm");
        return $"{LengthText.WithUncertainty(slope.Over(along), u95.Over(along), unit)} {words}{Toward(toward)}";
    }

    private static string Toward(Angle? toward) =>
        toward is { } angle ? string.Create(CultureInfo.InvariantCulture, $", toward {angle.Degrees:0}°") : "";
}
