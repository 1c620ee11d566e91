using Handspun.Metrology.Runout;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>The still picture of one runout record: the readings over time, every turn laid over one, and the profile about a circle.</summary>
/// <remarks>Where there is no runout it shows the readings over time and says what is missing.</remarks>
public static class RunoutPicture
{
    private const float Margin = RecordPage.Margin;
    private const float TraceTop = 108;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="ArgumentException">The parts of the content do not belong together: fewer angles than readings, say.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(RunoutPictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return Draw(content, null);
    }

    /// <summary>Lays the pictures of two records out on the same scales, so that they can be looked at side by side.</summary>
    /// <exception cref="ArgumentException">One has no runout, the units differ, or the parts of a content do not belong together.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static (Picture First, Picture Second) DrawTogether(RunoutPictureContent first, RunoutPictureContent second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return first.Unit == second.Unit && first.Result.Status == RunoutStatus.Measured && second.Result.Status == RunoutStatus.Measured
            ? (Draw(first, second), Draw(second, first))
            : throw new ArgumentException("Pictures on the same scales have a runout each, in the same unit.");
    }

    private static Picture Draw(RunoutPictureContent content, RunoutPictureContent? beside)
    {
        content.Check();
        Typefaces.Check();
        var notes = RecordPage.Lines(Wording.Notes(content));
        var title = TextFit.Plain($"{content.Title}. {content.Subtitle}".TrimEnd('.', ' '));
        var summary = TextFit.Plain(Wording.Summary(content));
        var trace = Trace.Of(content);
        var notesHeight = RecordPage.HeightOf(notes);
        if (content.Result.Status != RunoutStatus.Measured)
        {
            return new(new(RecordPage.Width, (int)(420 + notesHeight)), title, summary, (canvas, page) => DrawTraceOnly(canvas, page, content, trace, notes));
        }

        var profile = TurnedProfile.Of(content);
        var scale = HeightScale.Of(content, profile);
        var span = 0.0;
        if (beside is not null)
        {
            scale = scale.Beside(HeightScale.Of(beside, TurnedProfile.Of(beside)));
            span = TracePanel.SpanOf(Trace.Of(beside), beside.Unit);
        }

        return new(new(RecordPage.Width, (int)(708 + notesHeight)), title, summary, (canvas, page) =>
        {
            // Room beyond the natural height goes to the plots, somewhat more of it to the lower ones.
            var spare = page.Height - 708 - notesHeight;
            var right = page.Width - Margin;
            var traceBottom = TraceTop + 168 + spare * 0.4f;
            var turnsTop = traceBottom + 84;
            var turnsBottom = page.Height - notesHeight - 64;
            var ringWidth = Math.Min(turnsBottom - turnsTop + 22, (page.Width - 2 * Margin) * 0.36f);
            RecordHeading.Draw(canvas, Wording.Heading(content), Margin, right, Margin);
            TracePanel.Draw(canvas, page, new(Margin + 68, TraceTop, right, traceBottom), trace, content.Unit, span);
            TurnsPanel.Draw(
                canvas, page, new(Margin + 68, turnsTop, right - ringWidth - 12 - Dimension.Room, turnsBottom), content, profile, scale);
            RingPanel.Draw(canvas, page, new(right - ringWidth, turnsTop, right, turnsBottom + 38), content, profile, scale);
            RecordPage.DrawNotes(canvas, page, notes);
        });
    }

    private static void DrawTraceOnly(SKCanvas canvas, SKSize page, RunoutPictureContent content, Trace trace, string[] notes)
    {
        var right = page.Width - Margin;
        RecordHeading.Draw(canvas, Wording.Heading(content), Margin, right, Margin);
        var top = RecordPage.DrawMissing(canvas, page, Wording.Missing(content.Result));
        var bottom = page.Height - RecordPage.HeightOf(notes) - 58;
        TracePanel.Draw(canvas, page, new(Margin + 68, top, right, bottom), trace, content.Unit);
        RecordPage.DrawNotes(canvas, page, notes);
    }
}
