using System.Globalization;
using CsCheck;

namespace Handspun.Metrology.Tests;

/// <summary>Drawn cases that are the same on every run: a fit of drawn numbers must not fail on a day of its own choosing.</summary>
internal static class Steady
{
    private const uint UsualStream = 17;

    /// <summary>Checks so many cases. Another stream of them is drawn where the environment names one in <c>CASE_STREAM</c>.</summary>
    public static void Each<T>(this Gen<T> cases, int count, Action<T> check)
    {
        var stream = uint.TryParse(Environment.GetEnvironmentVariable("CASE_STREAM"), NumberStyles.None, CultureInfo.InvariantCulture, out var named) ? named : UsualStream;
        var draw = new PCG(stream, 1);
        for (var i = 0; i < count; i++)
        {
            check(cases.Generate(draw, null, out _));
        }
    }

    /// <inheritdoc cref="Each{T}"/>
    public static void Each<T1, T2>(this Gen<(T1, T2)> cases, int count, Action<T1, T2> check) =>
        cases.Each(count, drawn => check(drawn.Item1, drawn.Item2));

    /// <inheritdoc cref="Each{T}"/>
    public static void Each<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> cases, int count, Action<T1, T2, T3, T4> check) =>
        cases.Each(count, drawn => check(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4));
}
