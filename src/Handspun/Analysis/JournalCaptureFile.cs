using System.Globalization;
using Handspun.Capture.Finishing;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.Points;
using Handspun.Jobs.ShopGauges;

namespace Handspun.Analysis;

/// <summary>Captures in the journal's format, decoded from their raw bytes.</summary>
internal static class JournalCaptureFile
{
    /// <summary>Whether a file begins as a journal does.</summary>
    public static bool IsJournal(string path)
    {
        try
        {
            using var text = JournalFile.OpenText(path);
            return text.ReadByte() == '{';
        }
        catch (InvalidDataException)
        {
            return true;   // packed, and damaged: reading it says so
        }
    }

    /// <summary>Reads one.</summary>
    /// <exception cref="CaptureFileException">It cannot be read.</exception>
    public static CaptureFile Read(string path)
    {
        try
        {
            var replay = JournalReplay.Read(path);
            if (replay.Readings.Count > CsvCaptureFile.MostRows)
            {
                throw new CaptureFileException(string.Create(CultureInfo.InvariantCulture, $"The journal holds {replay.Readings.Count} readings, more than the {CsvCaptureFile.MostRows} that are measured at once: it is no single capture; export the capture from its record."));
            }

            var task = JournalledTask.Read(replay.Header.Task);
            return new(
                replay.Header.Point,
                ReplayedCapture.Of(replay, replay.Header.From ?? TimeSpan.Zero, task?.Setup),
                RecordMaking.TraitsOf(ProfileReader.Read(replay.Header.Profile, replay.Header.ProfileText), task?.LastCheck, task?.Setup))
            {
                Kind = task is null ? KindOfPoint.Of(replay.Header.Point) : KindOf(task),
                Wanted = task?.Wanted,
                Setup = task?.Setup,
                Limit = task?.Limit,
                LastCheck = task?.LastCheck,
                GaugeWarnings = task is null ? [] : [.. GaugeDoubt.Warnings(task.LastCheck, GaugeWords.DayOf(replay.Header.Zero + (replay.Header.From ?? TimeSpan.Zero)))],
            };
        }
        catch (Exception e) when (e is JournalException or ProfileException)
        {
            throw new CaptureFileException(e.Message);
        }
    }

    private static PointKind KindOf(JournalledTask task) =>
        PointKindCodes.Find(task.Kind) ?? throw new CaptureFileException($"The journal is of a measurement that this version does not know ('{task.Kind}'): replay it with the version that wrote it.");
}
