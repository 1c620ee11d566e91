namespace Handspun.Metrology.Runout;

/// <summary>What is left open where no encoder tells the angle within a turn: a hand that pushes in step with the turn looks like a shape.</summary>
/// <remarks>
/// With θ read as θ + w·sin θ, a first wave of amplitude A₁ gains a second of π·w·A₁ (first order in w; w in turns). So of a second
/// wave A₂ any part may be the hand's, and of a hand's rhythm w any part may be a second wave: the angle may be off by up to
/// A₂/(π·A₁) or w of a turn, u of a turn together. A second wave of π·u·A₁ read at angles that are off by u·sin θ adds 2π²·u²·A₁ to the
/// first; a third wave A₃ may be a push twice a turn, which changes the first by A₃. How large a part is so mistaken, as a standard deviation, is taken from simulated hands.
/// </remarks>
internal static class RhythmDoubt
{
    private const double Mistaken = 0.3;
    private const double MistakenWhole = 0.7;   // where the fit has no second wave, all of it may have gone into the hand

    /// <summary>Standard uncertainties of the angle as a whole, in turns, and of the first wave's amplitude, in millimetres.</summary>
    public static (double Turns, double Millimetres) Of(Trace trace, ProfileFit fit)
    {
        var (first, second, third) = (Amplitude(fit, 1), Amplitude(fit, 2), Amplitude(fit, 3));
        if (first == 0)
        {
            return (0, 0);
        }

        var open = Math.Sqrt(Math.Pow(second / (Math.PI * first), 2) + Math.Pow(Rhythm(trace.Seconds, fit.Turns), 2));
        var size = Math.Sqrt(Math.Pow(2 * Math.PI * Math.PI * first * open * open, 2) + third * third);
        var mistaken = fit.Harmonics > 1 ? Mistaken : MistakenWhole;
        return (Math.Min(0.25, mistaken * open), mistaken * Math.Min(first, size));
    }

    private static double Amplitude(ProfileFit fit, int wave) =>
        wave > fit.Harmonics ? 0 : Math.Sqrt(Math.Pow(fit.Series[2 * wave - 1], 2) + Math.Pow(fit.Series[2 * wave], 2));

    // How far the hand runs ahead and behind in step with the turn, in turns: the once-a-turn part of the speed's logarithm, over 2π.
    private static double Rhythm(double[] seconds, double[] turns)
    {
        var steps = Enumerable.Range(1, turns.Length - 1)
            .Select(i => (Turn: (turns[i] + turns[i - 1]) / 2, Share: turns[i] - turns[i - 1], Seconds: seconds[i] - seconds[i - 1]))
            .Where(step => step is { Share: > 0, Seconds: > 0 })
            .Select(step => (step.Turn, step.Share, Log: Math.Log(step.Share / step.Seconds)))
            .ToList();
        var all = steps.Sum(step => step.Share);
        if (all <= 0)
        {
            return 0;
        }

        double Mean(Func<(double Turn, double Share, double Log), double> of) => steps.Sum(step => step.Share * of(step)) / all;
        var (middle, level) = (Mean(step => step.Turn), Mean(step => step.Log));
        var width = Mean(step => Math.Pow(step.Turn - middle, 2));
        var slope = width > 0 ? Mean(step => (step.Turn - middle) * (step.Log - level)) / width : 0;
        double Left((double Turn, double Share, double Log) step) => step.Log - level - slope * (step.Turn - middle);
        var cosine = 2 * Mean(step => Left(step) * Math.Cos(2 * Math.PI * step.Turn));
        var sine = 2 * Mean(step => Left(step) * Math.Sin(2 * Math.PI * step.Turn));
        return Math.Sqrt(cosine * cosine + sine * sine) / (2 * Math.PI);
    }
}
