namespace Handspun.Metrology.Runout;

/// <summary>The readings that a fit may use: from the first movement to the last, single wild ones left out.</summary>
internal sealed class Trace
{
    /// <summary>When each was taken, in seconds; readings that arrived together are spread over the time they took.</summary>
    public required double[] Seconds { get; init; }

    /// <summary>What each was, in millimetres.</summary>
    public required double[] Millimetres { get; init; }

    /// <summary>The place of each in the capture.</summary>
    public required int[] Places { get; init; }

    /// <summary>The readings left out so far.</summary>
    public required List<RejectedReading> Rejected { get; init; }

    /// <summary>The gauge's step, as stated or as the readings show it, in millimetres.</summary>
    public required double Resolution { get; init; }

    /// <summary>Standard deviation of the noise from reading to reading, the step's share included, in millimetres.</summary>
    public required double Noise { get; init; }

    /// <summary>Highest minus lowest.</summary>
    public double Range => Millimetres.Length == 0 ? 0 : Millimetres.Max() - Millimetres.Min();

    /// <summary>How far along the trace a reading is: −1 at the first, 1 at the last.</summary>
    public double Course(int reading) => CourseAt(Seconds[reading]);

    /// <summary>How far along the trace each reading is.</summary>
    public double[] Courses() => Array.ConvertAll(Seconds, CourseAt);

    /// <summary>How far along the trace a moment is: −1 at the first reading, 1 at the last, and no further.</summary>
    public double CourseAt(double seconds)
    {
        var length = Seconds[^1] - Seconds[0];
        return length > 0 ? Math.Clamp(2 * (seconds - Seconds[0]) / length - 1, -1, 1) : 0;
    }

    /// <summary>Prepares a valid capture.</summary>
    /// <param name="seconds">Times.</param>
    /// <param name="millimetres">Readings, as many.</param>
    /// <param name="statedResolution">The gauge's step in millimetres; 0 where it is not known.</param>
    /// <param name="trim">Whether stretches that do not move are left out at both ends.</param>
    public static Trace Of(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, double statedResolution, bool trim = true)
    {
        var spread = ArrivalTimes.Spread(seconds);
        var resolution = statedResolution > 0 ? statedResolution : ReadingNoise.Step(millimetres);
        var noise = Math.Max(ReadingNoise.Between(millimetres), resolution / Math.Sqrt(12));
        var wild = Knocks.Find(millimetres, noise);
        var (from, to) = trim
            ? Standing.Trim(millimetres, wild, Math.Max(3.5 * noise, 1.2 * resolution))
            : (0, millimetres.Length);

        var stuck = StuckReadings.Find(millimetres, 3 * resolution + 6 * noise);

        List<int> places = [];
        List<RejectedReading> rejected = [];
        for (var i = 0; i < millimetres.Length; i++)
        {
            if (i < from || i >= to)
            {
                rejected.Add(new(i, RejectionReason.Standing));
            }
            else if (wild[i])
            {
                rejected.Add(new(i, RejectionReason.Knock));
            }
            else if (stuck[i])
            {
                rejected.Add(new(i, RejectionReason.Stuck));
            }
            else
            {
                places.Add(i);
            }
        }

        return new Trace
        {
            Seconds = [.. places.Select(place => spread[place])],
            Millimetres = [.. Take(millimetres, places)],
            Places = [.. places],
            Rejected = rejected,
            Resolution = resolution,
            Noise = noise,
        };
    }

    /// <summary>All readings that were left out, in order: those that the trace never had, and those to which a fit gave no weight.</summary>
    /// <param name="weights">The fit's weight of each reading of the trace.</param>
    public List<RejectedReading> LeftOutBy(double[] weights) =>
    [
        .. Rejected
            .Concat(Enumerable.Range(0, weights.Length).Where(i => weights[i] == 0).Select(i => new RejectedReading(Places[i], RejectionReason.Knock)))
            .OrderBy(left => left.Reading),
    ];

    /// <summary>The trace without the readings of a local fault.</summary>
    /// <param name="isFault">Whether a reading at a place of the capture belongs to it.</param>
    public Trace Without(Predicate<int> isFault)
    {
        int[] kept = [.. Enumerable.Range(0, Places.Length).Where(i => !isFault(Places[i]))];
        return new Trace
        {
            Seconds = Array.ConvertAll(kept, i => Seconds[i]),
            Millimetres = Array.ConvertAll(kept, i => Millimetres[i]),
            Places = Array.ConvertAll(kept, i => Places[i]),
            Rejected =
            [
                .. Rejected.Select(left => left.Reason == RejectionReason.Knock && isFault(left.Reading) ? left with { Reason = RejectionReason.LocalFault } : left),
                .. Places.Where(place => isFault(place)).Select(place => new RejectedReading(place, RejectionReason.LocalFault)),
            ],
            Resolution = Resolution,
            Noise = Noise,
        };
    }

    private static double[] Take(ReadOnlySpan<double> values, List<int> places)
    {
        var taken = new double[places.Count];
        for (var i = 0; i < taken.Length; i++)
        {
            taken[i] = values[places[i]];
        }

        return taken;
    }
}
