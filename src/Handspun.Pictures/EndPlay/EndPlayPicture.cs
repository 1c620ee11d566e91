using Handspun.Metrology.EndPlay;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;

namespace Handspun.Pictures.EndPlay;

/// <summary>The still picture of one end play record: the readings over time with both stops, and every cycle by itself against the limit.</summary>
/// <remarks>Where there is no end play it shows the readings over time and says what is missing.</remarks>
public static class EndPlayPicture
{
    private const float NamesOfStops = 60;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="ArgumentException">The parts of the content do not belong together.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(EndPlayPictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        content.Check();
        return new RepeatsPicture(
            EndPlayWording.Heading(content),
            EndPlayWording.Notes(content),
            EndPlayWording.Summary(content),
            content.Result.Status == EndPlayStatus.Measured ? EndPlayWording.Cycles(content) : null,
            EndPlayWording.Missing(content.Result),
            (canvas, page, area) => HoldsPanel.Draw(canvas, page, area, content),
            NamesOfStops).Lay();
    }
}
