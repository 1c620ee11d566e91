using Handspun.Metrology.Runout;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>The still picture of one runout record: the readings over time, every turn laid over one, and the profile about a circle.</summary>
/// <remarks>Where there is no runout it shows the readings over time and says what is missing.</remarks>
public static class RunoutPicture
{
    private const int PageWidth = 960;
    private const float Margin = 20;
    private const float TraceTop = 108;
    private const float NoteHeight = 19;
    private static readonly TextStyle Note = new(13.5f, Ink.QuietText);

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="ArgumentException">The parts of the content do not belong together: fewer angles than readings, say.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(RunoutPictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        content.Check();
        Typefaces.Check();
        var notes = Wording.Notes(content).SelectMany(note => TextFit.Lines(note, PageWidth - 2 * Margin, Note)).ToArray();
        var title = TextFit.Plain($"{content.Title}. {content.Subtitle}".TrimEnd('.', ' '));
        var summary = TextFit.Plain(Wording.Summary(content));
        var trace = Trace.Of(content);
        var notesHeight = NoteHeight * notes.Length + 10;
        if (content.Result.Status != RunoutStatus.Measured)
        {
            return new(new(PageWidth, (int)(420 + notesHeight)), title, summary, (canvas, page) => DrawTraceOnly(canvas, page, content, trace, notes));
        }

        var profile = TurnedProfile.Of(content);
        var scale = HeightScale.Of(content, profile);
        return new(new(PageWidth, (int)(708 + notesHeight)), title, summary, (canvas, page) =>
        {
            // Room beyond the natural height goes to the plots, somewhat more of it to the lower ones.
            var spare = page.Height - 708 - NoteHeight * notes.Length - 10;
            var right = page.Width - Margin;
            var traceBottom = TraceTop + 168 + spare * 0.4f;
            var turnsTop = traceBottom + 84;
            var turnsBottom = page.Height - NoteHeight * notes.Length - 10 - 64;
            var ringWidth = Math.Min(turnsBottom - turnsTop + 22, (page.Width - 2 * Margin) * 0.36f);
            RecordHeading.Draw(canvas, content, Margin, right, Margin);
            TracePanel.Draw(canvas, page, new(Margin + 68, TraceTop, right, traceBottom), trace, content.Unit);
            TurnsPanel.Draw(
                canvas, page, new(Margin + 68, turnsTop, right - ringWidth - 12 - RunoutDimension.Room, turnsBottom), content, profile, scale);
            RingPanel.Draw(canvas, page, new(right - ringWidth, turnsTop, right, turnsBottom + 38), content, profile, scale);
            DrawNotes(canvas, page, notes);
        });
    }

    private static void DrawTraceOnly(SKCanvas canvas, SKSize page, RunoutPictureContent content, Trace trace, string[] notes)
    {
        var right = page.Width - Margin;
        RecordHeading.Draw(canvas, content, Margin, right, Margin);
        var style = new TextStyle(17, Ink.Text, Strong: true);
        var lines = TextFit.Lines(Wording.Missing(content.Result), right - Margin, style);
        for (var i = 0; i < lines.Count; i++)
        {
            Letters.Draw(canvas, lines[i], new(Margin, 100 + 22 * i), style);
        }

        var bottom = page.Height - NoteHeight * notes.Length - 10 - 58;
        TracePanel.Draw(canvas, page, new(Margin + 68, 120 + 22 * lines.Count, right, bottom), trace, content.Unit);
        DrawNotes(canvas, page, notes);
    }

    private static void DrawNotes(SKCanvas canvas, SKSize page, string[] notes)
    {
        var first = page.Height - NoteHeight * notes.Length;
        for (var i = 0; i < notes.Length; i++)
        {
            Letters.Draw(canvas, notes[i], new(Margin, first + NoteHeight * i), Note);
        }
    }
}
