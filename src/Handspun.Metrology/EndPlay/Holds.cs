namespace Handspun.Metrology.EndPlay;

/// <summary>The stretches in which the shaft was held, found among the readings.</summary>
internal static class Holds
{
    private const double WidestOfTheWay = 0.08;
    private const double Undecided = 0.15;   // the part of the way on either side of the middle that belongs to neither end

    /// <summary>The holds of each visit to an end, in order.</summary>
    /// <param name="places">The readings that are no knocks, by their place.</param>
    /// <param name="seconds">All times, from the start of the capture.</param>
    /// <param name="millimetres">All values.</param>
    /// <param name="levels">The two levels.</param>
    /// <param name="floor">The least standard deviation that the readings of a hold may be given.</param>
    /// <param name="step">The gauge's step.</param>
    public static List<Hold> Find(List<int> places, double[] seconds, double[] millimetres, TwoLevels levels, double floor, double step)
    {
        var widest = Math.Max(WidestOfTheWay * levels.Apart, Math.Max(4 * floor, 1.05 * step));
        var readings = new SteadyReadings(seconds, millimetres, levels.Slope);
        List<Hold> holds = [];
        List<int> visit = [];
        var end = Stop.Low;
        void Close()
        {
            if (visit.Count > 0)
            {
                holds.AddRange(Hold.In(end, visit, readings, floor).Where(hold => hold.Places.Length >= 2 && hold.Width <= widest));
                visit.Clear();
            }
        }

        foreach (var place in places)
        {
            var above = levels.AboveMiddle(seconds[place], millimetres[place]);
            if (Math.Abs(above) < Undecided * levels.Apart)
            {
                continue;
            }

            var now = above > 0 ? Stop.High : Stop.Low;
            if (now != end)
            {
                Close();
                end = now;
            }

            visit.Add(place);
        }

        Close();
        return holds;
    }
}
