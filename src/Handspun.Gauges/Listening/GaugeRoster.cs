using System.Globalization;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Readings;
using Microsoft.Extensions.Logging;

namespace Handspun.Gauges.Listening;

/// <summary>All gauges of the station, each with its listener and its running journal.</summary>
public sealed class GaugeRoster : IDisposable
{
    private readonly Dictionary<GaugeName, GaugeListener> _listeners;

    /// <summary>A roster that does not listen yet.</summary>
    /// <param name="setups">The gauges; no name twice.</param>
    /// <param name="journals">The folder in which each gauge's journal gets a folder of its own.</param>
    /// <param name="opener">Opens their ports.</param>
    /// <param name="clock">Stamps what they send.</param>
    /// <param name="feed">Gets what they say.</param>
    /// <param name="time">The time.</param>
    /// <param name="logger">The log.</param>
    public GaugeRoster(IEnumerable<GaugeSetup> setups, string journals, ILinkOpener opener, GaugeClock clock, GaugeFeed feed, TimeProvider time, ILogger<GaugeListener> logger) =>
        _listeners = setups.ToDictionary(
            setup => setup.Name,
            setup => new GaugeListener(setup, opener, new RollingJournal(FolderOf(journals, setup.Name), HeaderOf(setup, clock)), clock, feed, time, logger));

    /// <summary>The gauges in the order of their names.</summary>
    public IEnumerable<GaugeListener> All => _listeners.Values.OrderBy(listener => listener.Setup.Name.ToString(), StringComparer.Ordinal);

    /// <summary>The gauge of that name; null where there is none.</summary>
    public GaugeListener? Find(GaugeName name) => _listeners.GetValueOrDefault(name);

    /// <summary>Listens to all of them until told to stop.</summary>
    public Task RunAsync(CancellationToken stopping) => Task.WhenAll(_listeners.Values.Select(listener => listener.RunAsync(stopping)));

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var listener in _listeners.Values)
        {
            listener.Journal.Dispose();
        }
    }

    private static string FolderOf(string journals, GaugeName name) => Path.Combine(journals, name.ToString());

    private static JournalHeader HeaderOf(GaugeSetup setup, GaugeClock clock) => new()
    {
        Gauge = setup.Name.ToString(),
        Port = Convert.ToString(setup.Port, CultureInfo.InvariantCulture) ?? "",
        Profile = setup.Profile.Name,
        ProfileText = setup.Profile.Text,
        Zero = clock.StartedAt,
    };
}
