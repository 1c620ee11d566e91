using Handspun.Analysis;
using Handspun.Capture.Methods.Runout;
using Handspun.Jobs.Comparing;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using Handspun.Station;

namespace Handspun.Filing;

/// <summary>Pictures of two records on the same scales, drawn anew from their journals.</summary>
internal sealed class PicturesTogether(RecordFolder folder, StationOptions options)
{
    /// <summary>Whether two records can be drawn so: both are runouts with a result and a journal.</summary>
    public bool CanDraw(CaptureRecord first, CaptureRecord second) => HasRunout(first) && HasRunout(second);

    /// <summary>The picture of a record on the scales that it shares with another; null where it cannot be drawn.</summary>
    public Picture? Draw(ComparedRecord shown, ComparedRecord beside) =>
        CanDraw(shown.Record, beside.Record) && Content(shown) is { } first && Content(beside) is { } second ? RunoutPicture.DrawTogether(first, second).First : null;

    private bool HasRunout(CaptureRecord record) =>
        record is { HasFiles: true, Figures: RunoutFigures { Value: not null } } && File.Exists(folder.JournalOf(record.Id));

    private RunoutPictureContent? Content(ComparedRecord compared)
    {
        try
        {
            var read = JournalCaptureFile.Read(folder.JournalOf(compared.Record.Id));
            return read.Finding() is RunoutFinding { IsMeasured: true } found
                ? RecordPictures.Runout($"{compared.Point.Title}, {compared.Job.Bike.Title}", RecordPictures.SubtitleOf(compared.Job.Number, compared.Record), read.Capture, found, compared.Record, options.Unit)
                : null;
        }
        catch (CaptureFileException)
        {
            return null;   // the record's own picture is still there
        }
    }
}

/// <summary>A record that is laid beside another.</summary>
/// <param name="Job">Its job.</param>
/// <param name="Point">Its point.</param>
/// <param name="Record">The record.</param>
internal sealed record ComparedRecord(Job Job, JobPoint Point, CaptureRecord Record)
{
    /// <summary>What was found there.</summary>
    public MeasuredAt Measured => MeasuredAt.Of(Point, Record);
}
