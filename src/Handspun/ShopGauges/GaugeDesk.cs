using Handspun.Bays;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Http;
using Handspun.Jobs.ShopGauges;

namespace Handspun.ShopGauges;

/// <summary>Where the gauges of the shop are looked up and checked, plugged in or not.</summary>
internal sealed class GaugeDesk(GaugeBook book, GaugeRoster roster, BayDesk bay, TimeProvider time)
{
    /// <summary>Today, in the shop.</summary>
    public DateOnly Today => GaugeWords.DayOf(time.GetUtcNow());

    /// <summary>All gauges, by name.</summary>
    public async Task<IReadOnlyList<KnownGauge>> AllAsync(CancellationToken cancellationToken)
    {
        var kept = (await book.AllAsync(cancellationToken)).ToDictionary(gauge => gauge.Name);
        return [.. kept.Keys.Union(roster.All.Select(gauge => gauge.Setup.Name.ToString())).Order(StringComparer.Ordinal).Select(name => Of(name, kept.GetValueOrDefault(name)))];
    }

    /// <summary>One gauge.</summary>
    /// <exception cref="GaugeNotFoundException">Neither the station nor the book knows it.</exception>
    public async Task<KnownGauge> FindAsync(string name, CancellationToken cancellationToken)
    {
        var known = Of(name, await book.FindAsync(name, cancellationToken));
        return known is { State: null, Kept: null }
            ? throw new GaugeNotFoundException($"There is no gauge '{name}': the shop has {string.Join(", ", (await AllAsync(cancellationToken)).Select(gauge => $"'{gauge.Name}'"))}.")
            : known;
    }

    /// <summary>Says what a gauge is; one that nobody knows yet is taken into the book.</summary>
    /// <exception cref="RequestSentenceException">Its name, or something of it, cannot be.</exception>
    public async Task<KnownGauge> DescribeAsync(string name, GaugeSheet sheet, CancellationToken cancellationToken)
    {
        if (!GaugeName.TryParse(name, out _))
        {
            throw new RequestSentenceException($"'{name}' is no name for a gauge: use up to 32 lower-case letters, digits and hyphens, a letter first.");
        }

        return sheet.Problem() is { } problem
            ? throw new RequestSentenceException(problem)
            : Of(name, await book.DescribeAsync(name, sheet, cancellationToken));
    }

    /// <summary>Keeps a check; captures that begin from now on are held to it.</summary>
    /// <exception cref="GaugeNotFoundException">There is no such gauge.</exception>
    /// <exception cref="RequestSentenceException">Something of it cannot be.</exception>
    public async Task<KnownGauge> CheckAsync(string name, CheckRequest request, CancellationToken cancellationToken)
    {
        var sheet = request.Read(await FindAsync(name, cancellationToken));
        if (sheet.Problems(Today).FirstOrDefault() is { } problem)
        {
            throw new RequestSentenceException(problem);
        }

        var kept = await book.CheckAsync(name, sheet, cancellationToken);
        if (GaugeName.TryParse(name, out var gauge))
        {
            await bay.RenewAsync(gauge, cancellationToken);
        }

        return Of(name, kept);
    }

    /// <summary>Keeps a study.</summary>
    /// <exception cref="GaugeNotFoundException">There is no such gauge.</exception>
    /// <exception cref="RequestSentenceException">Something of it cannot be.</exception>
    public async Task<KnownGauge> StudyAsync(string name, StudyRequest request, CancellationToken cancellationToken)
    {
        _ = await FindAsync(name, cancellationToken);
        return Of(name, await book.StudyAsync(name, request.Read(), cancellationToken));
    }

    private KnownGauge Of(string name, ShopGauge? kept)
    {
        var listener = GaugeName.TryParse(name, out var gauge) ? roster.Find(gauge) : null;
        return new(name, listener?.State, listener?.Setup.Profile, kept);
    }
}
