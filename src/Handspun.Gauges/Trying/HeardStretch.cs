using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Trying;

/// <summary>What was heard at a port for a while.</summary>
/// <param name="Profiles">The profiles that would have listened like this.</param>
/// <param name="Entries">What came, as a journal keeps it.</param>
/// <param name="Lasted">How long it was listened.</param>
public sealed record HeardStretch(IReadOnlyList<GaugeProfile> Profiles, IReadOnlyList<JournalEntry> Entries, TimeSpan Lasted)
{
    private const int SampleBytes = 48;

    /// <summary>Bytes that came.</summary>
    public int Bytes => Chunks.Sum(chunk => chunk.Bytes.Length);

    /// <summary>The first of them.</summary>
    public ReadOnlyMemory<byte> Sample => Chunks.SelectMany(chunk => chunk.Bytes.ToArray()).Take(SampleBytes).ToArray();

    private IEnumerable<JournalEntry.Chunk> Chunks => Entries.OfType<JournalEntry.Chunk>();

    /// <summary>What each of the profiles makes of it, best first.</summary>
    public IEnumerable<ProfileTrial> Trials() => ProfileTrial.Ranked(Profiles.Select(profile => ProfileTrial.Of(profile, this)));
}
