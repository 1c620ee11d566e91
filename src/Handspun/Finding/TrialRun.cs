using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Trying;
using Handspun.Station;

namespace Handspun.Finding;

/// <summary>Listens at a port in every way that some profile knows, and finds the profiles that suit.</summary>
internal sealed class TrialRun(ListeningTrial trial)
{
    private readonly List<HeardStretch> _heard = [];

    /// <summary>What was heard, way by way.</summary>
    public IReadOnlyList<HeardStretch> Heard => _heard;

    /// <summary>The profiles that made readings of it, best first.</summary>
    public IReadOnlyList<ProfileTrial> Proposals => [.. ProfileTrial.Ranked(_heard.SelectMany(heard => heard.Trials()))];

    /// <summary>Listens.</summary>
    /// <param name="port">Where.</param>
    /// <param name="profiles">The profiles that come into question.</param>
    /// <param name="span">How long in each way.</param>
    /// <param name="told">Is told each way when it has been listened in.</param>
    /// <param name="stopping">Ends it.</param>
    /// <exception cref="StationTroubleException">The port does not open.</exception>
    public async Task ListenAsync(GaugePort port, IEnumerable<GaugeProfile> profiles, TimeSpan span, Action<HeardStretch> told, CancellationToken stopping)
    {
        foreach (var way in ListeningTrial.Ways(port, profiles))
        {
            var asks = way[0].Request is { OnDemand: true } or { Start.IsEmpty: false };
            if (asks && Proposals.Any(proposal => proposal.Suits))
            {
                return;   // it speaks by itself: nothing is sent to it
            }

            try
            {
                _heard.Add(await trial.ListenAsync(port, way, span, stopping));
                told(_heard[^1]);
            }
            catch (LinkUnavailableException e)
            {
                throw new StationTroubleException(e.Message);
            }
        }
    }

    /// <summary>Keeps what was heard in the best way as a journal.</summary>
    /// <exception cref="StationTroubleException">The file cannot be written.</exception>
    public void Record(string file, GaugePort port)
    {
        var best = Proposals is [var first, ..]
            ? _heard.First(heard => heard.Profiles.Contains(first.Profile))
            : _heard.MaxBy(heard => heard.Bytes)!;
        var profile = Proposals is [var proposed, ..] ? proposed.Profile : best.Profiles[0];
        var header = new JournalHeader
        {
            Gauge = "tried",
            Port = port.ToString()!,
            Profile = profile.Name,
            ProfileText = profile.Text,
            Zero = trial.Zero,
        };
        try
        {
            File.Delete(file);
            using var journal = JournalWriter.Create(file, header);
            foreach (var entry in best.Entries)
            {
                journal.Append(entry);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StationTroubleException($"{file} cannot be written ({e.Message}): give another file with --record.");
        }
    }
}
