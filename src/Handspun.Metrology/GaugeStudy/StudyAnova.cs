namespace Handspun.Metrology.GaugeStudy;

/// <summary>One line of an analysis of variance.</summary>
/// <param name="DegreesOfFreedom">Degrees of freedom; at least 1.</param>
/// <param name="SumOfSquares">Sum of squares, in square millimetres.</param>
public readonly record struct AnovaLine(int DegreesOfFreedom, double SumOfSquares)
{
    /// <summary>Sum of squares over degrees of freedom.</summary>
    public double MeanSquare => SumOfSquares / DegreesOfFreedom;

    /// <summary>The two lines taken for one.</summary>
    public AnovaLine With(AnovaLine other) => new(DegreesOfFreedom + other.DegreesOfFreedom, SumOfSquares + other.SumOfSquares);
}

/// <summary>The analysis of variance of a crossed gauge study: every mechanic measures every part several times.</summary>
/// <param name="Mechanics">Between mechanics.</param>
/// <param name="Parts">Between parts.</param>
/// <param name="Together">Mechanics by parts: what is left between the cells.</param>
/// <param name="Trials">Within the cells.</param>
public sealed record StudyAnova(AnovaLine Mechanics, AnovaLine Parts, AnovaLine Together, AnovaLine Trials)
{
    /// <summary>Takes a full table apart (two-way analysis of variance with equal cells; any textbook).</summary>
    /// <param name="values">Values by mechanic, part and trial: at least two of each.</param>
    internal static StudyAnova Of(double[,,] values)
    {
        var (mechanics, parts, trials) = (values.GetLength(0), values.GetLength(1), values.GetLength(2));

        // Deviations from a first mean keep the digits of values that are large and hardly differ.
        var shift = values.Cast<double>().Average();
        var (byMechanic, byPart, byCell) = (new double[mechanics], new double[parts], new double[mechanics, parts]);
        var grand = 0.0;
        for (var m = 0; m < mechanics; m++)
        {
            for (var p = 0; p < parts; p++)
            {
                for (var t = 0; t < trials; t++)
                {
                    var value = values[m, p, t] - shift;
                    byMechanic[m] += value / (parts * trials);
                    byPart[p] += value / (mechanics * trials);
                    byCell[m, p] += value / trials;
                    grand += value / values.Length;
                }
            }
        }

        var (between, within) = (0.0, 0.0);
        for (var m = 0; m < mechanics; m++)
        {
            for (var p = 0; p < parts; p++)
            {
                between += trials * Square(byCell[m, p] - byMechanic[m] - byPart[p] + grand);
                for (var t = 0; t < trials; t++)
                {
                    within += Square(values[m, p, t] - shift - byCell[m, p]);
                }
            }
        }

        return new(
            new(mechanics - 1, parts * trials * byMechanic.Sum(mean => Square(mean - grand))),
            new(parts - 1, mechanics * trials * byPart.Sum(mean => Square(mean - grand))),
            new((mechanics - 1) * (parts - 1), between),
            new(mechanics * parts * (trials - 1), within));
    }

    private static double Square(double value) => value * value;
}
