using Handspun.Metrology.Bore;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;

namespace Handspun.Pictures.Bore;

/// <summary>The still picture of one bore record: the rocks over time with the turning point of every pass, and every pass by itself against the limit.</summary>
/// <remarks>Where there is no result it shows the readings over time and says what is missing.</remarks>
public static class BorePicture
{
    private const float Margin = RecordPage.Margin;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="ArgumentException">The parts of the content do not belong together.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(BorePictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        content.Check();
        Typefaces.Check();
        var notes = RecordPage.Lines(BoreWording.Notes(content));
        var notesHeight = RecordPage.HeightOf(notes);
        var title = TextFit.Plain($"{content.Title}. {content.Subtitle}".TrimEnd('.', ' '));
        var measured = content.Result.Status == BoreStatus.Measured;
        return new(new(RecordPage.Width, (int)((measured ? 650 : 420) + notesHeight)), title, TextFit.Plain(BoreWording.Summary(content)), (canvas, page) =>
        {
            var right = page.Width - Margin;
            var foot = page.Height - notesHeight;
            RecordHeading.Draw(canvas, BoreWording.Heading(content), Margin, right, Margin);
            if (measured)
            {
                var middle = 108 + (foot - 108) * 0.55f;
                PassesPanel.Draw(canvas, page, new(Margin + 68, 108, right, middle - 48), content);
                RepeatsPanel.Draw(canvas, page, new(Margin + 68, middle + 36, right - Dimension.Room, foot - 58), BoreWording.Passes(content));
            }
            else
            {
                var top = RecordPage.DrawMissing(canvas, page, BoreWording.Missing(content.Result));
                PassesPanel.Draw(canvas, page, new(Margin + 68, top, right, foot - 58), content);
            }

            RecordPage.DrawNotes(canvas, page, notes);
        });
    }
}
