using Handspun.Metrology.GaugeStudy;

namespace Handspun.Jobs.ShopGauges;

/// <summary>What is typed of a study: every mechanic measures every part several times.</summary>
public sealed record StudySheet
{
    private const int MostOfEach = 50;
    private const double Largest = 1000;

    /// <summary>The mechanics, by name.</summary>
    public required IReadOnlyList<string> Mechanics { get; init; }

    /// <summary>The parts, by name.</summary>
    public required IReadOnlyList<string> Parts { get; init; }

    /// <summary>What was measured, in millimetres: by mechanic, by part, by trial.</summary>
    public required IReadOnlyList<IReadOnlyList<IReadOnlyList<double>>> ValuesMillimetres { get; init; }

    /// <summary>What cannot be, in one sentence that says what to do; null where it can be used.</summary>
    public string? Problem() => Names() ?? Shape() ?? Values() ?? GaugeStudyMethod.Fault(Table());

    /// <summary>Works it out.</summary>
    /// <exception cref="ArgumentException">It has a problem.</exception>
    public GaugeStudyResult Work() => Problem() is { } problem ? throw new ArgumentException(problem) : GaugeStudyMethod.Work(Table());

    private int Trials => ValuesMillimetres.SelectMany(parts => parts).Select(trials => trials.Count).DefaultIfEmpty(0).First();

    private string? Names() =>
        Mechanics.Concat(Parts).Any(string.IsNullOrWhiteSpace) ? "Every mechanic and every part has a name."
        : Mechanics.Distinct().Count() < Mechanics.Count || Parts.Distinct().Count() < Parts.Count ? "Two mechanics, or two parts, have the same name: tell them apart."
        : Mechanics.Count > MostOfEach || Parts.Count > MostOfEach ? $"A study has at most {MostOfEach} mechanics and {MostOfEach} parts."
        : null;

    private string? Shape()
    {
        if (ValuesMillimetres.Count != Mechanics.Count)
        {
            return $"There are {Mechanics.Count} mechanics and values of {ValuesMillimetres.Count}: give values of each.";
        }

        var trials = Trials;
        for (var m = 0; m < Mechanics.Count; m++)
        {
            if (ValuesMillimetres[m].Count != Parts.Count)
            {
                return $"{Mechanics[m]} measured {ValuesMillimetres[m].Count} parts of {Parts.Count}: everyone measures every part.";
            }

            for (var p = 0; p < Parts.Count; p++)
            {
                if (ValuesMillimetres[m][p].Count != trials)
                {
                    return $"{Mechanics[m]} measured part {Parts[p]} {ValuesMillimetres[m][p].Count} times where others took {trials}: every part is measured as often.";
                }
            }
        }

        return trials > MostOfEach ? $"A study has at most {MostOfEach} trials." : null;
    }

    private string? Values() => ValuesMillimetres.SelectMany(parts => parts).SelectMany(trials => trials).Any(value => !(Math.Abs(value) < Largest))
        ? "A value of the study is no length of less than a metre: measure that part again and type it in."
        : null;

    private double[,,] Table()
    {
        var table = new double[Mechanics.Count, Parts.Count, Trials];
        for (var m = 0; m < table.GetLength(0); m++)
        {
            for (var p = 0; p < table.GetLength(1); p++)
            {
                for (var t = 0; t < table.GetLength(2); t++)
                {
                    table[m, p, t] = ValuesMillimetres[m][p][t];
                }
            }
        }

        return table;
    }
}
