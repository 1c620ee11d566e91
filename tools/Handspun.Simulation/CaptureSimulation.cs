namespace Handspun.Simulation;

/// <summary>Lets a hand turn a shaft under an indicator, with the truth on record.</summary>
public static class CaptureSimulation
{
    /// <summary>One capture.</summary>
    /// <param name="shape">The shaft.</param>
    /// <param name="turn">The hand.</param>
    /// <param name="indicator">The gauge.</param>
    /// <param name="seed">The same seed gives the same capture.</param>
    /// <param name="leadInSeconds">How long the shaft stands before the hand moves.</param>
    /// <param name="leadOutSeconds">How long it stands after.</param>
    /// <param name="aid">What else tells the angle; null for nothing.</param>
    public static SimulatedCapture Run(
        ShaftShape shape, HandTurn turn, Indicator indicator, int seed, double leadInSeconds, double leadOutSeconds, AngleAid? aid = null)
    {
        var capture = Run(shape.HeightAt, turn, indicator, seed, leadInSeconds, leadOutSeconds, aid);
        var zero = capture.ZeroDegrees;
        return capture with
        {
            TrueTirMillimetres = shape.TirMillimetres,
            TrueHighSpotDegrees = shape.HighSpotDegrees - zero - 360 * Math.Floor((shape.HighSpotDegrees - zero) / 360),
        };
    }

    /// <summary>One capture of anything that stands at a height for each angle of a shaft: a cam, say.</summary>
    /// <param name="heightAt">The height in millimetres at an angle of the shaft that the hand turns and the aid tells, in degrees, whole turns counted.</param>
    /// <param name="turn">The hand.</param>
    /// <param name="indicator">The gauge.</param>
    /// <param name="seed">The same seed gives the same capture.</param>
    /// <param name="leadInSeconds">How long the shaft stands before the hand moves.</param>
    /// <param name="leadOutSeconds">How long it stands after.</param>
    /// <param name="aid">What else tells the angle; null for nothing.</param>
    public static SimulatedCapture Run(
        Func<double, double> heightAt, HandTurn turn, Indicator indicator, int seed, double leadInSeconds, double leadOutSeconds, AngleAid? aid = null)
    {
        aid ??= AngleAid.None;
        var chance = new Random(seed);
        var start = chance.NextDouble();   // the shaft stands anywhere
        var level = chance.NextBetween(-0.4, 0.4);
        var length = leadInSeconds + turn.Seconds + leadOutSeconds;
        double TurnsAt(double seconds) => start + turn.TurnsAt(seconds - leadInSeconds);

        var gaps = Stretches(chance, indicator.Dropouts, length, 0.35);
        var stuck = Stretches(chance, indicator.StuckStretches, length, 0.25);
        List<double> times = [], readings = [], degrees = [];
        for (var i = 0; i / indicator.RateHz <= length; i++)
        {
            var time = i / indicator.RateHz;
            if (gaps.Any(gap => time >= gap.From && time < gap.To))
            {
                continue;
            }

            var creep = indicator.DriftMicrometres / 1000 * time / length;
            var shown = indicator.Show(level + creep + heightAt(360 * TurnsAt(time)), chance);
            times.Add(time);
            degrees.Add(360 * TurnsAt(time));
            readings.Add(readings.Count > 0 && stuck.Any(at => time >= at.From && time < at.To) ? readings[^1] : shown);
        }

        for (var knock = 0; knock < indicator.Knocks; knock++)
        {
            readings[chance.Next(readings.Count)] += indicator.KnockMillimetres * chance.NextBetween(0.4, 1) * (chance.Next(2) == 0 ? 1 : -1);
        }

        return new SimulatedCapture
        {
            Seconds = Stamp(times, indicator, chance),
            Millimetres = [.. readings],
            IndexSeconds = aid.TurnsPerIndex > 0 ? Passings(TurnsAt, length, aid.TurnsPerIndex) : [],
            MarkSeconds = aid.Marks
                ? [.. Passings(TurnsAt, length, 1).Select(time => Math.Max(0, time + 0.05 * chance.NextNormal())).Order()]
                : [],
            EncoderSeconds = aid.EncoderSteps > 0 ? [.. times] : [],
            EncoderDegrees = aid.EncoderSteps > 0
                ? [.. degrees.Select(degree => 360.0 / aid.EncoderSteps * Math.Floor(degree / 360 * aid.EncoderSteps))]
                : [],
            TrueDegrees = [.. degrees],
            ZeroDegrees = aid.TurnsPerIndex > 0 ? 360 * Math.Ceiling(start / aid.TurnsPerIndex) * aid.TurnsPerIndex : 0,
        };
    }

    private static List<(double From, double To)> Stretches(Random chance, int count, double length, double about)
    {
        var stretches = new List<(double From, double To)>();
        for (var i = 0; i < count; i++)
        {
            var from = chance.NextBetween(0.1, 0.85) * length;
            stretches.Add((from, from + about * chance.NextBetween(0.5, 1.5)));
        }

        return stretches;
    }

    // A pulse comes on the first passing of each of its angles; slipping back and forth over one gives a second pulse only in a worn sensor.
    private static double[] Passings(Func<double, double> turnsAt, double length, double apart)
    {
        const double step = 0.0005;
        var passings = new List<double>();
        var next = Math.Ceiling(turnsAt(0) / apart) * apart;
        for (var time = 0.0; time <= length; time += step)
        {
            if (turnsAt(time) < next)
            {
                continue;
            }

            passings.Add(time);
            next += apart;
        }

        return [.. passings];
    }

    private static double[] Stamp(List<double> times, Indicator indicator, Random chance)
    {
        var stamps = times.ToArray();
        for (var i = 0; i < stamps.Length && indicator.JitterMilliseconds > 0; i++)
        {
            stamps[i] += Math.Abs(chance.NextNormal()) * indicator.JitterMilliseconds / 1000;   // never early
            stamps[i] = i > 0 ? Math.Max(stamps[i], stamps[i - 1]) : stamps[i];
        }

        for (var first = 0; first < stamps.Length && indicator.Burst > 1; first += indicator.Burst)
        {
            var last = Math.Min(first + indicator.Burst, stamps.Length) - 1;
            Array.Fill(stamps, stamps[last], first, last - first + 1);
        }

        return stamps;
    }
}
