using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;

namespace Handspun.Pictures.Bore;

/// <summary>The still picture of one bore record: the rocks over time with the turning point of every pass, and every pass by itself against the limit.</summary>
/// <remarks>Where there is no result it shows the readings over time and says what is missing.</remarks>
public static class BorePicture
{
    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="ArgumentException">The parts of the content do not belong together.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(BorePictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        content.Check();
        return new RepeatsPicture(
            BoreWording.Heading(content),
            BoreWording.Notes(content),
            BoreWording.Summary(content),
            content.Value is null ? null : BoreWording.Passes(content),
            BoreWording.Missing(content.Result),
            (canvas, page, area) => PassesPanel.Draw(canvas, page, area, content)).Lay();
    }
}
