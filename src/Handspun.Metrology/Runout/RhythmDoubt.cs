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
        var logs = new double[turns.Length];
        var (all, middle, level) = (0.0, 0.0, 0.0);
        for (var i = 1; i < turns.Length; i++)
        {
            var (share, lasted) = (Share(i), seconds[i] - seconds[i - 1]);
            logs[i] = share > 0 && lasted > 0 ? Math.Log(share / lasted) : double.NaN;
            if (Counts(i))
            {
                (all, middle, level) = (all + share, middle + share * Turn(i), level + share * logs[i]);
            }
        }

        if (all <= 0)
        {
            return 0;
        }

        (middle, level) = (middle / all, level / all);
        var (width, lean) = (0.0, 0.0);
        for (var i = 1; i < turns.Length; i++)
        {
            if (Counts(i))
            {
                var off = Turn(i) - middle;
                (width, lean) = (width + Share(i) * off * off, lean + Share(i) * off * (logs[i] - level));
            }
        }

        var slope = width > 0 ? lean / width : 0;
        var (cosine, sine) = (0.0, 0.0);
        for (var i = 1; i < turns.Length; i++)
        {
            if (Counts(i))
            {
                var left = Share(i) * (logs[i] - level - slope * (Turn(i) - middle));
                var (s, c) = Math.SinCos(2 * Math.PI * Turn(i));
                (cosine, sine) = (cosine + left * c, sine + left * s);
            }
        }

        return 2 * Math.Sqrt(cosine * cosine + sine * sine) / all / (2 * Math.PI);

        // A step between two readings: how far it goes, where its middle is, and whether the shaft went on in it.
        double Share(int i) => turns[i] - turns[i - 1];
        double Turn(int i) => (turns[i] + turns[i - 1]) / 2;
        bool Counts(int i) => !double.IsNaN(logs[i]);
    }
}
