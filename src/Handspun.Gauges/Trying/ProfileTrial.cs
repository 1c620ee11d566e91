using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Trying;

/// <summary>What a profile makes of bytes of an unknown gauge.</summary>
public sealed record ProfileTrial
{
    // An indicator under a hand moves a few millimetres a second and sends ten times a second or more; a frame that was cut at
    // the wrong byte jumps by anything (common practice, no source).
    private const double LikelyStepMillimetres = 2;
    private const double UsualTravelMillimetres = 100;
    private const double Good = 0.9;
    private const int FewestReadings = 3;

    /// <summary>The profile.</summary>
    public required GaugeProfile Profile { get; init; }

    /// <summary>Frames that became readings.</summary>
    public int Readings { get; init; }

    /// <summary>Frames that became none.</summary>
    public long Unreadable { get; init; }

    /// <summary>Readings that no gauge would send: out of its travel, or a leap from the one before.</summary>
    public int Unlikely { get; init; }

    /// <summary>Readings a second.</summary>
    public double PerSecond { get; init; }

    /// <summary>The smallest reading, in millimetres; null where there is none.</summary>
    public double? Low { get; init; }

    /// <summary>The largest reading, in millimetres; null where there is none.</summary>
    public double? High { get; init; }

    /// <summary>Whether the frames named their unit, so that it is not the profile's word alone.</summary>
    public bool NamesUnit { get; init; }

    /// <summary>The share of frames that became likely readings, 0 to 1.</summary>
    public double Share => Readings == 0 ? 0 : (Readings - Unlikely) / (double)(Readings + Unreadable);

    /// <summary>Whether the profile suits: nearly all became likely readings, and enough of them.</summary>
    public bool Suits => Readings >= FewestReadings && Share >= Good;

    /// <summary>Decodes what was heard with a profile.</summary>
    public static ProfileTrial Of(GaugeProfile profile, HeardStretch heard)
    {
        var decoder = new EntryDecoder(profile);
        var readings = new List<Reading>();
        foreach (var entry in heard.Entries)
        {
            decoder.Decode(entry, readings);
        }

        var values = readings.ConvertAll(reading => reading.Millimetres);
        return new ProfileTrial
        {
            Profile = profile,
            Readings = values.Count,
            Unreadable = decoder.Unreadable,
            Unlikely = UnlikelyOf(values, profile.Value.TravelMillimetres),
            PerSecond = heard.Lasted > TimeSpan.Zero ? values.Count / heard.Lasted.TotalSeconds : 0,
            Low = values.Count > 0 ? values.Min() : null,
            High = values.Count > 0 ? values.Max() : null,
            NamesUnit = decoder.NamesUnit,
        };
    }

    /// <summary>Those that made something of it, best first.</summary>
    public static IEnumerable<ProfileTrial> Ranked(IEnumerable<ProfileTrial> trials) => trials
        .Where(trial => trial.Share > 0)
        .OrderByDescending(trial => trial.Suits)
        .ThenByDescending(trial => trial.Share)
        .ThenByDescending(trial => trial.NamesUnit)
        .ThenByDescending(trial => trial.Readings)
        .ThenBy(trial => trial.Profile.Name, StringComparer.Ordinal);

    private static int UnlikelyOf(List<double> values, double travel)
    {
        var most = travel > 0 ? travel : UsualTravelMillimetres;
        var unlikely = 0;
        for (var i = 0; i < values.Count; i++)
        {
            unlikely += Math.Abs(values[i]) > most || (i > 0 && Math.Abs(values[i] - values[i - 1]) > LikelyStepMillimetres) ? 1 : 0;
        }

        return unlikely;
    }
}
