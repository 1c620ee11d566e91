using System.Globalization;
using Handspun.Capture.Finishing;
using Handspun.Capture.Methods.Bore;
using Handspun.Capture.Methods.EndPlay;
using Handspun.Capture.Methods.Lift;
using Handspun.Capture.Methods.Runout;
using Handspun.Jobs.Bores;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Bore;
using Handspun.Pictures.EndPlay;
using Handspun.Pictures.Lift;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;

namespace Handspun.Filing;

/// <summary>The picture of a record, drawn as its kind is drawn.</summary>
internal static class RecordPictures
{
    /// <summary>The picture; null where its kind has none.</summary>
    public static Picture? Of(FinishedCapture capture, CaptureRecord record, LengthUnit unit) => capture.Finding switch
    {
        RunoutFinding runout => RunoutPicture.Draw(Runout(TitleOf(capture), SubtitleOf(capture.Task.Job, record), capture.Readings, runout, record, unit)),
        EndPlayFinding endPlay => EndPlayPicture.Draw(new EndPlayPictureContent
        {
            Title = TitleOf(capture),
            Subtitle = SubtitleOf(capture.Task.Job, record),
            Seconds = capture.Readings.Seconds,
            Millimetres = capture.Readings.Millimetres,
            Result = endPlay.Result,
            Limit = record.Limit?.Tolerance,
            Verdict = record.Verdict,
            Unit = unit,
        }),
        BoreFinding bore => BorePicture.Draw(new BorePictureContent
        {
            Title = TitleOf(capture),
            Subtitle = SubtitleOf(capture.Task.Job, record),
            Seconds = capture.Readings.Seconds,
            Millimetres = capture.Readings.Millimetres,
            Result = bore.Result,
            LargerReadsLower = bore.Setup?.LargerReadsLower == true,
            Place = bore.Setup is BoreSetup setup ? BorePlaces.InWords(setup, unit) : null,
            Limit = record.Limit?.Tolerance,
            Verdict = record.Verdict,
            Unit = unit,
        }),
        LiftFinding lift => LiftPicture.Draw(new LiftPictureContent
        {
            Title = TitleOf(capture),
            Subtitle = SubtitleOf(capture.Task.Job, record),
            Seconds = capture.Readings.Seconds,
            Millimetres = capture.Readings.Millimetres,
            Result = lift.Result,
            Top = lift.Setup?.Top,
            Limit = record.Limit?.Tolerance,
            Verdict = record.Verdict,
            Unit = unit,
        }),
        _ => null,
    };

    /// <summary>What the picture of a runout is drawn from.</summary>
    public static RunoutPictureContent Runout(string title, string subtitle, RotationCapture readings, RunoutFinding found, CaptureRecord record, LengthUnit unit) => new()
    {
        Title = title,
        Subtitle = subtitle,
        Seconds = readings.Seconds,
        Millimetres = readings.Millimetres,
        Result = found.Result,
        Limit = record.Limit?.Tolerance,
        Verdict = record.Verdict,
        Unit = unit,
    };

    private static string TitleOf(FinishedCapture capture) =>
        capture.Task.Bike.Length > 0 ? $"{capture.Task.PointTitle}, {capture.Task.Bike}" : capture.Task.PointTitle;

    /// <summary>Job, date and gauge of a record, and whether its limit is confirmed.</summary>
    public static string SubtitleOf(string job, CaptureRecord record) =>
        string.Create(CultureInfo.InvariantCulture, $"Job {job}, {record.At.ToLocalTime():d MMM yyyy, HH:mm}, gauge {record.Gauge.Name}{(record is { Verdict: not null, Limit.Confirmed: false } ? ", limit not confirmed" : "")}");
}
