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
        RunoutFinding runout => RunoutPicture.Draw(new RunoutPictureContent
        {
            Title = TitleOf(capture),
            Subtitle = SubtitleOf(capture, record),
            Seconds = capture.Readings.Seconds,
            Millimetres = capture.Readings.Millimetres,
            Result = runout.Result,
            Limit = record.Limit?.Tolerance,
            Verdict = record.Verdict,
            Unit = unit,
        }),
        EndPlayFinding endPlay => EndPlayPicture.Draw(new EndPlayPictureContent
        {
            Title = TitleOf(capture),
            Subtitle = SubtitleOf(capture, record),
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
            Subtitle = SubtitleOf(capture, record),
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
            Subtitle = SubtitleOf(capture, record),
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

    private static string TitleOf(FinishedCapture capture) =>
        capture.Task.Bike.Length > 0 ? $"{capture.Task.PointTitle}, {capture.Task.Bike}" : capture.Task.PointTitle;

    private static string SubtitleOf(FinishedCapture capture, CaptureRecord record) =>
        string.Create(CultureInfo.InvariantCulture, $"Job {capture.Task.Job}, {record.At.ToLocalTime():d MMM yyyy, HH:mm}, gauge {record.Gauge.Name}{(record is { Verdict: not null, Limit.Confirmed: false } ? ", limit not confirmed" : "")}");
}
