namespace Handspun.Metrology.Quantities;

/// <summary>A length, or a difference of two lengths: a runout, an uncertainty, a resolution.</summary>
/// <remarks>Always finite; may be negative where it is a difference. The default is zero. 1 in = 25.4 mm exactly (ISO 80000-3; by definition since 1959).</remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Millimetres in one inch, exact by definition.</summary>
    public const double MillimetresPerInch = 25.4;

    private Length(double millimetres) => Millimetres = millimetres;

    /// <summary>The length in millimetres.</summary>
    public double Millimetres { get; }

    /// <summary>The length in inches.</summary>
    public double Inches => Millimetres / MillimetresPerInch;

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>A length given in millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Length FromMillimetres(double value) => double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A length is a finite number.");

    /// <summary>A length given in inches.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Length FromInches(double value) => FromMillimetres(value * MillimetresPerInch);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    /// <summary>The sum of two lengths.</summary>
    public static Length operator +(Length left, Length right) => new(left.Millimetres + right.Millimetres);

    /// <summary>The difference of two lengths.</summary>
    public static Length operator -(Length left, Length right) => new(left.Millimetres - right.Millimetres);

    /// <summary>Whether the left is the shorter.</summary>
    public static bool operator <(Length left, Length right) => left.Millimetres < right.Millimetres;

    /// <summary>Whether the left is the longer.</summary>
    public static bool operator >(Length left, Length right) => left.Millimetres > right.Millimetres;

    /// <summary>Whether the left is no longer than the right.</summary>
    public static bool operator <=(Length left, Length right) => left.Millimetres <= right.Millimetres;

    /// <summary>Whether the left is no shorter than the right.</summary>
    public static bool operator >=(Length left, Length right) => left.Millimetres >= right.Millimetres;
}
