using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Store;
using Handspun.Metrology.GaugeStudy;
using Handspun.Station;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Checks;

/// <summary>The gauges in the shop's book: which of them are due for a check, and which failed their last one.</summary>
internal static class GaugeBookCheck
{
    private const string Subject = "Gauge book";

    /// <summary>A line for each gauge whose last check does not stand; one for all where every check does. None where there is no book that can be read.</summary>
    /// <param name="data">The data folder.</param>
    /// <param name="time">The wall clock.</param>
    /// <param name="cancellationToken">Stops looking.</param>
    public static async Task<IReadOnlyList<CheckLine>> OfAsync(DataFolder data, TimeProvider time, CancellationToken cancellationToken)
    {
        if (!File.Exists(data.Store))
        {
            return [];
        }

        try
        {
            var gauges = await new GaugeBook(new StoreAtRest(data), time).AllAsync(cancellationToken);
            var today = GaugeWords.DayOf(time.GetLocalNow());
            CheckLine[] lines = [.. gauges.Select(gauge => Line(gauge, today)).OfType<CheckLine>()];
            return lines.Length > 0 || gauges.Count == 0
                ? lines
                : [CheckLine.Good(Subject, gauges.Count == 1 ? $"The check of gauge '{gauges[0].Name}' stands." : $"The checks of all {gauges.Count} gauges stand.")];
        }
        catch (SqliteException)
        {
            return [];   // the store's own line says what is the matter with it
        }
    }

    private static CheckLine? Line(ShopGauge gauge, DateOnly today)
    {
        var warnings = GaugeDoubt.Warnings(gauge.LastCheck, today).ToArray();
        var subject = $"Gauge '{gauge.Name}'";
        return warnings.Length == 0 ? null
            : gauge.LastCheck?.On(today) == GaugeStanding.Failed ? CheckLine.Failing(subject, InWords(warnings))
            : CheckLine.Mind(subject, InWords(warnings));
    }

    private static string InWords(IEnumerable<Jobs.Records.RecordWarning> warnings) =>
        $"{string.Join(' ', warnings.Select(warning => warning.Sentence))} The page Gauges takes the check.";

    // Opened to be read only: a check changes nothing.
    private sealed class StoreAtRest(DataFolder data) : IDbContextFactory<JobsContext>
    {
        public JobsContext CreateDbContext() => new(new DbContextOptionsBuilder<JobsContext>().UseSqlite(
            new SqliteConnectionStringBuilder { DataSource = data.Store, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ConnectionString).Options);
    }
}
