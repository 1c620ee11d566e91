using Handspun.Jobs.Book;

namespace Handspun.Pictures.Report;

/// <summary>Where a report takes its pictures from.</summary>
public interface IReportPictures
{
    /// <summary>The picture of a record, as SVG that this program wrote; null where there is none.</summary>
    byte[]? PictureOf(string record);

    /// <summary>A photo, as JPEG or PNG; null where it is gone.</summary>
    byte[]? PhotoOf(PhotoAdded photo);
}
