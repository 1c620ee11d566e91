using Handspun.Capture.Methods;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Runout;

namespace Handspun.Analysis;

/// <summary>A capture that was read from a file, whatever its format.</summary>
/// <param name="Point">The measuring point that the file names; null where it names none.</param>
/// <param name="Capture">What the gauge, and whatever gives the angle, saw.</param>
/// <param name="Gauge">What the file says of the gauge.</param>
internal sealed record CaptureFile(string? Point, RotationCapture Capture, GaugeTraits Gauge)
{
    /// <summary>How it is measured: what the file says, else what its point says.</summary>
    public PointKind Kind { get; init; } = KindOfPoint.Of(Point);

    /// <summary>Turns, cycles or passes that were enough; null where the file does not say.</summary>
    public double? Wanted { get; init; }

    /// <summary>What was said of the point before; null where the file does not say.</summary>
    public PointSetup? Setup { get; init; }

    /// <summary>What the result was held against; null where the file does not say.</summary>
    public Limit? Limit { get; init; }

    /// <summary>The gauge's newest check before the capture; null where there was none, or the file does not say.</summary>
    public LastCheck? LastCheck { get; init; }

    /// <summary>What that check, or that there was none, means for the result; empty where the file does not say.</summary>
    public IReadOnlyList<RecordWarning> GaugeWarnings { get; init; } = [];

    /// <summary>What is asked of a lift curve.</summary>
    public LiftSettings Lift { get; init; } = new();

    /// <summary>What the capture says by the method of its kind, just as it was measured live.</summary>
    public CaptureFinding Finding()
    {
        var method = CaptureMethods.For(Kind);
        return method.Measure(Capture, Gauge, new MethodWish(Wanted ?? method.UsuallyWanted, Setup));
    }

    /// <summary>Reads a file: a journal, or CSV with a preamble. Which it is shows in its first character.</summary>
    /// <exception cref="CaptureFileException">It cannot be read; says where and why.</exception>
    public static CaptureFile Read(string path)
    {
        if (Directory.Exists(path))
        {
            throw new CaptureFileException($"{path} is a folder: name the files in it.");
        }

        try
        {
            return JournalCaptureFile.IsJournal(path) ? JournalCaptureFile.Read(path) : CsvCaptureFile.Read(path);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new CaptureFileException($"There is no file {path}.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new CaptureFileException($"{path} cannot be read: {e.Message}");
        }
    }
}

/// <summary>A file that holds no capture, or one that is not whole.</summary>
/// <param name="sentence">What is wrong, with the line where there is one.</param>
internal sealed class CaptureFileException(string sentence) : Exception(sentence)
{
    /// <summary>Something is wrong at a line, counted from 1.</summary>
    public static CaptureFileException AtLine(long line, string sentence) =>
        new(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Line {line}: {sentence}"));
}
