using Handspun.Jobs.Lengths;


namespace Handspun.Pictures.Scales;

/// <summary>The marked values of an axis.</summary>
/// <param name="Step">From one mark to the next.</param>
/// <param name="Marks">Each value with its text, rising.</param>
internal sealed record AxisTicks(double Step, IReadOnlyList<(double Value, string Text)> Marks)
{
    private int _decimals;

    /// <summary>Round values of a length in a unit: thousandths of an inch can always be told apart.</summary>
    public static AxisTicks ForLength(double low, double high, int wanted, LengthUnit unit) => unit.IsInch
        ? Round(low, high, wanted, smallestStep: 0.0001, leastDecimals: 3)
        : Round(low, high, wanted, smallestStep: 0.001, leastDecimals: 2);

    /// <summary>Round values: steps of 1, 2 or 5 in some decimal place.</summary>
    public static AxisTicks Round(double low, double high, int wanted, double smallestStep = 1e-6, int leastDecimals = 0)
    {
        var step = RoundStep(Math.Max((high - low) / wanted, smallestStep));
        var decimals = Math.Max(leastDecimals, (int)Math.Ceiling(-Math.Log10(step) - 1e-9));
        var first = (long)Math.Ceiling(low / step - 1e-9);
        var last = (long)Math.Floor(high / step + 1e-9);
        var marks = new List<(double, string)>();
        for (var i = first; i <= last; i++)
        {
            marks.Add((i * step, Digits.Of(i * step, decimals)));
        }

        return new(step, marks) { _decimals = decimals };
    }

    /// <summary>The same with one mark more where the last one lies below the value.</summary>
    public AxisTicks WithOneBeyond(double value)
    {
        if (Marks.Count > 0 && Marks[^1].Value >= value * (1 - 1e-9))
        {
            return this;
        }

        var next = Marks.Count == 0 ? Step : Marks[^1].Value + Step;
        return this with { Marks = [.. Marks, (next, Digits.Of(next, _decimals))] };
    }

    /// <summary>The angles of one turn, every 45 degrees.</summary>
    public static AxisTicks OneTurn { get; } = new(45, [.. Enumerable.Range(0, 9).Select(i => ((double)(45 * i), Digits.Of(45 * i, 0)))]);

    private static double RoundStep(double least)
    {
        var decade = Math.Pow(10, Math.Floor(Math.Log10(least) + 1e-9));
        foreach (var factor in (ReadOnlySpan<double>)[1, 2, 5])
        {
            if (factor * decade >= least * (1 - 1e-9))
            {
                return factor * decade;
            }
        }

        return 10 * decade;
    }
}
