using System.Globalization;
using Handspun.Capture.Finishing;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;

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

            return new(
                replay.Header.Point,
                ReplayedCapture.Of(replay, TimeSpan.Zero),
                RecordMaking.TraitsOf(ProfileReader.Read(replay.Header.Profile, replay.Header.ProfileText)));
        }
        catch (Exception e) when (e is JournalException or ProfileException)
        {
            throw new CaptureFileException(e.Message);
        }
    }
}
