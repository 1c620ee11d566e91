using System.Globalization;

namespace Handspun.Metrology.Reckonings;

/// <summary>A formula with its numbers filled in, and what comes out.</summary>
public sealed record Worked
{
    /// <summary>The formula in words, such as <c>room = installed height − coil bind − valve lift</c>.</summary>
    public required string Formula { get; init; }

    /// <summary>The right side of the formula with places for <see cref="Numbers"/>: <c>{0} − {1} − {2}</c>.</summary>
    public required string Pattern { get; init; }

    /// <summary>What goes into it, in order.</summary>
    public required IReadOnlyList<WorkedNumber> Numbers { get; init; }

    /// <summary>What comes out.</summary>
    public required WorkedNumber Result { get; init; }

    /// <summary>Expanded uncertainty of the result (k = 2), in the same unit.</summary>
    public required WorkedNumber U95 { get; init; }

    /// <summary>The formula with its numbers, the result and its uncertainty.</summary>
    public string Filled(ShownUnit unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"{string.Format(CultureInfo.InvariantCulture, Pattern, [.. Numbers.Select(number => number.Text(unit))])} = {Result.Text(unit)} ± {U95.Text(unit)}");
}
