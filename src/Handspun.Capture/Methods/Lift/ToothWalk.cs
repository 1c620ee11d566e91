namespace Handspun.Capture.Methods.Lift;

/// <summary>Which tooth of a disc each pulse was, where the last tooth is missing: the likeliest walk from tooth to tooth, by how long each step took.</summary>
/// <remarks>
/// Found by dynamic programming (Viterbi, 1967). A pulse that was lost, or came twice, costs as much as it is rare; a hand that halts
/// makes one step long and costs once; a wrong place of the gap costs in every turn, so the gap is found in spite of both.
/// </remarks>
internal static class ToothWalk
{
    private const double SpeedSpread = 0.2;   // of the logarithm, from one step to the next, by hand (from memory)
    private const double DearestStep = 6;     // a hand may halt at any tooth
    private const double WrongPulse = 8;      // lost, or twice
    private const double FurtherLost = 2;
    private const int MostLost = 3;
    private const int Beside = 3;

    /// <summary>How long one tooth took about each step, in seconds, one value a step.</summary>
    /// <param name="seconds">Times of the pulses.</param>
    public static double[] UsualSeconds(ReadOnlySpan<double> seconds)
    {
        var usual = new double[Math.Max(0, seconds.Length - 1)];
        List<double> near = [];
        for (var i = 0; i < usual.Length; i++)
        {
            near.Clear();
            for (var j = Math.Max(0, i - Beside); j <= Math.Min(usual.Length - 1, i + Beside); j++)
            {
                near.Add(seconds[j + 1] - seconds[j]);
            }

            near.Sort();
            usual[i] = Math.Max(1e-9, near[(near.Count - 1) * 2 / 5]);   // below the middle: what is missing only makes steps longer
        }

        return usual;
    }

    /// <summary>The tooth of each pulse, 0 after the gap; the same as the one before where a pulse came twice.</summary>
    /// <param name="seconds">Times of the pulses, one or more.</param>
    /// <param name="usual">How long a tooth took at each step.</param>
    /// <param name="teeth">Teeth in one turn, the missing one, which is the last, counted.</param>
    public static int[] Places(ReadOnlySpan<double> seconds, ReadOnlySpan<double> usual, int teeth)
    {
        var pulses = teeth - 1;
        var cost = new double[pulses];
        var from = new int[seconds.Length, pulses];
        for (var i = 1; i < seconds.Length; i++)
        {
            var took = (seconds[i] - seconds[i - 1]) / usual[i - 1];
            var next = new double[pulses];
            Array.Fill(next, double.PositiveInfinity);
            for (var lost = -1; lost <= Math.Min(MostLost, pulses - 2); lost++)
            {
                var (within, overTheGap) = (StepCost(took, 1 + lost, lost), StepCost(took, 2 + lost, lost));
                for (var place = 0; place < pulses; place++)
                {
                    var to = (place + 1 + lost) % pulses;
                    var sum = cost[place] + (to < place ? overTheGap : within);
                    if (sum < next[to])
                    {
                        (next[to], from[i, to]) = (sum, place);
                    }
                }
            }

            cost = next;
        }

        var places = new int[seconds.Length];
        places[^1] = Array.IndexOf(cost, cost.Min());
        for (var i = seconds.Length - 1; i > 0; i--)
        {
            places[i - 1] = from[i, places[i]];
        }

        return places;
    }

    private static double StepCost(double took, int passed, int lost) => lost < 0
        ? WrongPulse
        : Math.Min(DearestStep, Math.Pow(Math.Log(Math.Max(1e-9, took) / passed) / SpeedSpread, 2)) + (lost == 0 ? 0 : WrongPulse + FurtherLost * (lost - 1));
}
