using Handspun.Filing;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Photos;
using Handspun.Pictures.Report;

namespace Handspun.Reports;

/// <summary>The pictures of one job, from the station's folder. One that cannot be read is left out: a report without it is still a report.</summary>
internal sealed class JobPictures(Job job, RecordFolder records, PhotoFolder photos) : IReportPictures
{
    /// <inheritdoc/>
    public byte[]? PictureOf(string record) => Read(records.SvgOf(record));

    /// <inheritdoc/>
    public byte[]? PhotoOf(PhotoAdded photo) => Read(photos.PathOf(job.Number, photo, small: true)) ?? Read(photos.PathOf(job.Number, photo, small: false));

    private static byte[]? Read(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllBytes(path) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
