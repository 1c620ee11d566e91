using Handspun.Metrology.EndPlay;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;

namespace Handspun.Pictures.EndPlay;

/// <summary>The still picture of one end play record: the readings over time with both stops, and every cycle by itself against the limit.</summary>
/// <remarks>Where there is no end play it shows the readings over time and says what is missing.</remarks>
public static class EndPlayPicture
{
    private const float Margin = RecordPage.Margin;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="ArgumentException">The parts of the content do not belong together.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(EndPlayPictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        content.Check();
        Typefaces.Check();
        var notes = RecordPage.Lines(EndPlayWording.Notes(content));
        var notesHeight = RecordPage.HeightOf(notes);
        var title = TextFit.Plain($"{content.Title}. {content.Subtitle}".TrimEnd('.', ' '));
        var summary = TextFit.Plain(EndPlayWording.Summary(content));
        var measured = content.Result.Status == EndPlayStatus.Measured;
        return new(new(RecordPage.Width, (int)((measured ? 650 : 420) + notesHeight)), title, summary, (canvas, page) =>
        {
            var right = page.Width - Margin;
            var foot = page.Height - notesHeight;
            RecordHeading.Draw(canvas, EndPlayWording.Heading(content), Margin, right, Margin);
            if (measured)
            {
                var middle = 108 + (foot - 108) * 0.55f;
                HoldsPanel.Draw(canvas, page, new(Margin + 68, 108, right - 60, middle - 48), content);
                RepeatsPanel.Draw(canvas, page, new(Margin + 68, middle + 36, right - Dimension.Room, foot - 58), EndPlayWording.Cycles(content));
            }
            else
            {
                var top = RecordPage.DrawMissing(canvas, page, EndPlayWording.Missing(content.Result));
                HoldsPanel.Draw(canvas, page, new(Margin + 68, top, right, foot - 58), content);
            }

            RecordPage.DrawNotes(canvas, page, notes);
        });
    }
}
