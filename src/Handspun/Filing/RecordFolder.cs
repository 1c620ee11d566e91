using Handspun.Capture.Finishing;
using Handspun.Gauges.Journal;
using Handspun.Jobs.Records;
using Handspun.Pictures.Page;
using Handspun.Station;

namespace Handspun.Filing;

/// <summary>The files of a record: its journal and its pictures, in a folder of its own.</summary>
internal sealed class RecordFolder(StationOptions options)
{
    /// <summary>The raw bytes of a record: packed, or plain as earlier versions left them.</summary>
    public string JournalOf(string record) => options.Data.JournalOf(record);

    /// <summary>The picture for pages.</summary>
    public string SvgOf(string record) => Path.Combine(options.Data.Record(record), "picture.svg");

    /// <summary>The picture for everything else.</summary>
    public string PngOf(string record) => Path.Combine(options.Data.Record(record), "picture.png");

    /// <summary>Cuts the capture out of the gauge's running journal.</summary>
    public void WriteJournal(FinishedCapture capture, IReadOnlyList<string> segments) => new JournalCut
    {
        Segments = segments,
        From = capture.From,
        To = capture.To,
        Ending = RecordCodes.Of(capture.Ending),
        Header = JournalReader.HeadOf(segments[0]) with
        {
            Capture = capture.Id,
            Job = capture.Task.Job,
            Point = capture.Task.Point,
            Task = JournalledTask.TextOf(capture.Task),
        },
    }.WriteTo(MakeRoomFor(capture.Id));

    /// <summary>Makes the record's folder, and tells where its journal goes.</summary>
    public string MakeRoomFor(string record)
    {
        Directory.CreateDirectory(options.Data.Record(record));
        return options.Data.PackedJournalOf(record);
    }

    /// <summary>Draws the record's pictures, where its kind has any.</summary>
    public void WritePictures(FinishedCapture capture, CaptureRecord record)
    {
        if (RecordPictures.Of(capture, record, options.Unit) is { } picture)
        {
            Write(record.Id, picture);
        }
    }

    /// <summary>Writes a record's picture, for screens and for print.</summary>
    public void Write(string record, Picture picture)
    {
        Directory.CreateDirectory(options.Data.Record(record));
        File.WriteAllBytes(SvgOf(record), picture.ToSvg());
        File.WriteAllBytes(PngOf(record), picture.ToPng(2 * picture.Width, 2 * picture.Height));
    }
}
