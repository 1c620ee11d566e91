namespace Handspun.Metrology.Quantities;

/// <summary>A value with its expanded uncertainty.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="U95">Its expanded uncertainty (k = 2, JCGM 100), in the same quantity; zero or more.</param>
public readonly record struct Measured<T>(T Value, T U95) where T : struct;
