namespace Handspun.Jobs.Lengths;

/// <summary>The unit in which a shop reads and writes lengths, and the last place that it shows of them.</summary>
public enum LengthUnit
{
    /// <summary>Inches, in ten-thousandths.</summary>
    Inch,

    /// <summary>Millimetres, in thousandths.</summary>
    Millimetre,

    /// <summary>Inches, in thousandths.</summary>
    InchThousandths,

    /// <summary>Millimetres, in hundredths.</summary>
    MillimetreHundredths,
}

/// <summary>What a unit and its last place come to.</summary>
public static class LengthUnits
{
    extension(LengthUnit unit)
    {
        /// <summary>Whether lengths are in inches; otherwise they are in millimetres.</summary>
        public bool IsInch => unit is LengthUnit.Inch or LengthUnit.InchThousandths;

        /// <summary>How many decimals a length is shown with.</summary>
        public int Places => unit switch
        {
            LengthUnit.Inch => 4,
            LengthUnit.MillimetreHundredths => 2,
            _ => 3,
        };

        /// <summary>The same unit with its finer last place.</summary>
        public LengthUnit Fine => unit.IsInch ? LengthUnit.Inch : LengthUnit.Millimetre;
    }

    /// <summary>The unit of that symbol with that many decimals; null where lengths are not shown so.</summary>
    /// <param name="symbol"><c>in</c> or <c>mm</c>.</param>
    /// <param name="places">Decimals; null takes the finer ones.</param>
    public static LengthUnit? Find(string? symbol, long? places = null)
    {
        LengthUnit? fine = symbol switch { "in" => LengthUnit.Inch, "mm" => LengthUnit.Millimetre, _ => null };
        return places is null ? fine : All.Cast<LengthUnit?>().FirstOrDefault(unit => unit!.Value.Fine == fine && unit.Value.Places == places);
    }

    /// <summary>All of them, in the order to be offered.</summary>
    public static IReadOnlyList<LengthUnit> All { get; } = [LengthUnit.Inch, LengthUnit.InchThousandths, LengthUnit.Millimetre, LengthUnit.MillimetreHundredths];
}
