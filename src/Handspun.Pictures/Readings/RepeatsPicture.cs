using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Readings;

/// <summary>The layout that pictures of repeated strokes share: the readings over time above, every stroke by itself below.</summary>
/// <param name="Heading">What stands at the top.</param>
/// <param name="Notes">What stands at the foot.</param>
/// <param name="Summary">The whole result in words.</param>
/// <param name="Repeats">The strokes by themselves; null where there is no result.</param>
/// <param name="Missing">What is said where there is none.</param>
/// <param name="OverTime">Draws the readings over time into an area.</param>
/// <param name="RoomAtRight">What the names beside the readings take, in the unit of the page.</param>
internal sealed record RepeatsPicture(
    HeadingWords Heading, IEnumerable<string> Notes, string Summary, RepeatsContent? Repeats, string Missing, Action<SKCanvas, SKSize, SKRect> OverTime, float RoomAtRight = 0)
{
    private const float Margin = RecordPage.Margin;
    private const float Axis = 68;
    private const float Top = 108;
    private const float Below = 58;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public Picture Lay()
    {
        Typefaces.Check();
        var notes = RecordPage.Lines(Notes);
        var notesHeight = RecordPage.HeightOf(notes);
        var title = TextFit.Plain($"{Heading.Title}. {Heading.Subtitle}".TrimEnd('.', ' '));
        return new(new(RecordPage.Width, (int)((Repeats is null ? 420 : 650) + notesHeight)), title, TextFit.Plain(Summary), (canvas, page) =>
        {
            var right = page.Width - Margin;
            var foot = page.Height - notesHeight;
            RecordHeading.Draw(canvas, Heading, Margin, right, Margin);
            if (Repeats is { } repeats)
            {
                var middle = Top + (foot - Top) * 0.55f;
                OverTime(canvas, page, new(Margin + Axis, Top, right - RoomAtRight, middle - 48));
                RepeatsPanel.Draw(canvas, page, new(Margin + Axis, middle + 36, right - Dimension.Room, foot - Below), repeats);
            }
            else
            {
                OverTime(canvas, page, new(Margin + Axis, RecordPage.DrawMissing(canvas, page, Missing), right, foot - Below));
            }

            RecordPage.DrawNotes(canvas, page, notes);
        });
    }
}
