using System.Globalization;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Reckonings;

/// <summary>A number of a worked formula: a length, or a plain number with a unit of its own.</summary>
public readonly record struct WorkedNumber
{
    private WorkedNumber(double value, bool isLength, string unit, int places) => (Value, IsLength, Unit, Places) = (value, isLength, unit, places);

    /// <summary>The value: millimetres where it is a length, else plain.</summary>
    public double Value { get; }

    /// <summary>Whether it is a length, which is shown in the unit that is asked for.</summary>
    public bool IsLength { get; }

    /// <summary>The unit of a plain number; empty where it has none.</summary>
    public string Unit { get; }

    /// <summary>Decimal places of a plain number.</summary>
    public int Places { get; }

    /// <summary>A length.</summary>
    public static WorkedNumber Of(Length length) => new(length.Millimetres, true, "mm", 3);

    /// <summary>A plain number, to so many places.</summary>
    public static WorkedNumber Plain(double value, int places, string unit = "") => new(value, false, unit, places);

    /// <summary>The number and its unit.</summary>
    public string Text(ShownUnit unit) => !IsLength ? Join(Value.ToString($"F{Places}", CultureInfo.InvariantCulture), Unit)
        : unit == ShownUnit.Inches ? Join((Value / Length.MillimetresPerInch).ToString("F4", CultureInfo.InvariantCulture), "in")
        : Join(Value.ToString("F3", CultureInfo.InvariantCulture), "mm");

    private static string Join(string number, string unit) => (unit.Length > 0 ? $"{number} {unit}" : number).Replace('-', '−');
}
