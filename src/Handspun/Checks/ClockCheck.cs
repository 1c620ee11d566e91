using System.Globalization;
using Handspun.Station;

namespace Handspun.Checks;

/// <summary>The wall clock, which dates the records: readings themselves are timed by a clock that nobody sets.</summary>
internal static class ClockCheck
{
    private const string Subject = "Clock";
    private static readonly TimeSpan Tolerated = TimeSpan.FromMinutes(2);

    /// <summary>Compares it with what the data folder and the program themselves date from.</summary>
    public static CheckLine Of(DataFolder data, TimeProvider time)
    {
        var now = time.GetUtcNow();
        if (Newest(data) is { } newest && newest > now + Tolerated)
        {
            return CheckLine.Failing(Subject, $"It says {Shown(now)} (UTC), and the newest file of a record is of {Shown(newest)}: set it, or let the network set it, before the next job.");
        }

        var built = File.GetLastWriteTimeUtc(Path.Combine(AppContext.BaseDirectory, "handspun.dll"));
        return now + Tolerated < built
            ? CheckLine.Failing(Subject, $"It says {Shown(now)} (UTC), which is before this program was made: set it, or let the network set it.")
            : CheckLine.Good(Subject, $"It says {Shown(now)} (UTC), after the newest record.");
    }

    private static DateTimeOffset? Newest(DataFolder data) => Directory.Exists(data.Records)
        ? Directory.EnumerateFiles(data.Records, "journal.jsonl*", SearchOption.AllDirectories).Select(file => (DateTimeOffset?)new DateTimeOffset(File.GetLastWriteTimeUtc(file), TimeSpan.Zero)).Max()
        : null;

    private static string Shown(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
