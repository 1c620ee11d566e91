using Handspun.Pictures.Lettering;
using SkiaSharp;

namespace Handspun.Pictures.Page;

/// <summary>What the pages of all records have in common: their width, the notes at their foot, and what is said where there is no result.</summary>
internal static class RecordPage
{
    public const int Width = 960;
    public const float Margin = 20;
    private const float NoteHeight = 19;
    private const float AboveNotes = 10;
    private const float MissingHeight = 22;
    private static readonly TextStyle Note = new(13.5f, Ink.QuietText);
    private static readonly TextStyle Missing = new(17, Ink.Text, Strong: true);

    /// <summary>Notes broken into the lines that fit the page.</summary>
    public static string[] Lines(IEnumerable<string> notes) => [.. notes.SelectMany(note => TextFit.Lines(note, Width - 2 * Margin, Note))];

    /// <summary>How much of the page's foot the notes take.</summary>
    public static float HeightOf(string[] lines) => NoteHeight * lines.Length + AboveNotes;

    /// <summary>Draws the notes at the foot of the page.</summary>
    public static void DrawNotes(SKCanvas canvas, SKSize page, string[] lines)
    {
        var first = page.Height - NoteHeight * lines.Length;
        for (var i = 0; i < lines.Length; i++)
        {
            Letters.Draw(canvas, lines[i], new(Margin, first + NoteHeight * i), Note);
        }
    }

    /// <summary>Says below the heading why there is no result.</summary>
    /// <returns>Where the next thing may begin.</returns>
    public static float DrawMissing(SKCanvas canvas, SKSize page, string sentence)
    {
        var lines = TextFit.Lines(sentence, page.Width - 2 * Margin, Missing);
        for (var i = 0; i < lines.Count; i++)
        {
            Letters.Draw(canvas, lines[i], new(Margin, 100 + MissingHeight * i), Missing);
        }

        return 120 + MissingHeight * lines.Count;
    }
}
