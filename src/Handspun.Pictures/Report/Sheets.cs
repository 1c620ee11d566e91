using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>The pages of a document as they fill from top to bottom. They are laid out first and written then, so that each can say how many there are.</summary>
internal sealed class Sheets
{
    private const float Margin = 45;
    private const float FootRoom = 22;
    private const float LeastZoom = 0.7f;
    private readonly PaperSize _paper;
    private readonly float _zoom;
    private readonly List<List<Action<SKCanvas>>> _pages = [];
    private float _y;

    public Sheets(PaperSize paper)
        : this(paper, 1)
    {
    }

    private Sheets(PaperSize paper, float zoom)
    {
        (_paper, _zoom) = (paper, zoom);
        Break();
    }

    /// <summary>Where text begins.</summary>
    public float Left => Margin / _zoom;

    /// <summary>How wide text can be.</summary>
    public float Width => (_paper.Width - 2 * Margin) / _zoom;

    /// <summary>How high a page is above its foot.</summary>
    public float WholeHeight => (_paper.Height - 2 * Margin - FootRoom) / _zoom;

    /// <summary>What is left of this page.</summary>
    public float Room => Left + WholeHeight - _y;

    private bool IsFresh => _y <= Left;

    /// <summary>Puts something that should be one page, made smaller until it is, as long as it can still be read.</summary>
    public void OnOnePage(Action<Sheets> put)
    {
        Sheets tried;
        var zoom = 1f;
        do
        {
            tried = new(_paper, zoom);
            put(tried);
            zoom -= 0.05f;
        }
        while (tried._pages.Count > 1 && zoom >= LeastZoom);

        _pages.RemoveAt(_pages.Count - 1);
        _pages.AddRange(tried._pages.Select(page => (List<Action<SKCanvas>>)[canvas =>
        {
            canvas.Save();
            canvas.Scale(tried._zoom);
            page.ForEach(draw => draw(canvas));
            canvas.Restore();
        }]));
        _y = Left + WholeHeight;
    }

    /// <summary>Goes to the next page, unless this one is still empty.</summary>
    public void Break()
    {
        if (_pages.Count == 0 || !IsFresh)
        {
            _pages.Add([]);
            _y = Left;
        }
    }

    /// <summary>Goes to the next page where so much does not fit on this one.</summary>
    public void Need(float height)
    {
        if (height > Room)
        {
            Break();
        }
    }

    /// <summary>Leaves a gap; none at the top of a page.</summary>
    public void Gap(float height) => _y += IsFresh ? 0 : height;

    /// <summary>Puts something of a height here, or on the next page where it does not fit.</summary>
    /// <param name="height">Its height.</param>
    /// <param name="draw">Draws it; it is told where its top is.</param>
    public void Put(float height, Action<SKCanvas, float> draw)
    {
        Need(height);
        var top = _y;
        _pages[^1].Add(canvas => draw(canvas, top));
        _y += height;
    }

    /// <summary>Puts a text here; a long one goes on over the page.</summary>
    public void Text(string text, TextStyle style, float indent = 0)
    {
        var whole = Passage.Of(text, Width - indent, style);
        for (var from = 0; from < whole.Lines.Count;)
        {
            Need(whole.LineHeight);
            var part = whole.Part(from, Math.Max(1, (int)(Room / whole.LineHeight)));
            Put(part.Height, (canvas, top) => part.Draw(canvas, Left + indent, top));
            from += part.Lines.Count;
        }
    }

    /// <summary>Puts a thin line between what is above and what comes; none at the top of a page.</summary>
    public void Rule(float above = 6, float below = 8)
    {
        if (IsFresh)
        {
            return;
        }

        Gap(above);
        Put(0, (canvas, top) => Line(canvas, Left, top, Left + Width, Ink.Ring, 0.8f));
        Gap(below);
    }

    /// <summary>Writes all pages as a PDF.</summary>
    /// <param name="into">Where to; it need not be able to seek.</param>
    /// <param name="title">The title that a reader shows.</param>
    /// <param name="made">When it was made.</param>
    /// <param name="head">What stands at the foot of each page, beside its number.</param>
    public void Write(Stream into, string title, DateTimeOffset made, string head)
    {
        using var written = new SKManagedWStream(into);
        using var document = SKDocument.CreatePdf(written, new SKDocumentPdfMetadata
        {
            Title = title,
            Creator = "Handspun",
            Producer = "Handspun",
            Creation = made.UtcDateTime,
            Modified = made.UtcDateTime,
            RasterDpi = 300,
            EncodingQuality = 80,
        });
        for (var page = 0; page < _pages.Count; page++)
        {
            using var canvas = document.BeginPage(_paper.Width, _paper.Height);
            Frame(canvas, page, head);
            foreach (var draw in _pages[page])
            {
                draw(canvas);
            }

            document.EndPage();
        }

        document.Close();
    }

    private void Frame(SKCanvas canvas, int page, string head)
    {
        var number = $"Page {page + 1} of {_pages.Count}";
        var foot = _paper.Height - Margin;
        Line(canvas, Left, foot - 13, Left + Width, Ink.Ring, 0.6f);
        Passage.DrawLine(canvas, OneLine(head, Width - 90), Left, foot, Type.Running);
        Passage.DrawLine(canvas, number, Left + Width - Passage.WidthOf(number, Type.Running), foot, Type.Running);
    }

    private static string OneLine(string text, float width) => Passage.Of(text, width, Type.Running).Lines is { Count: > 0 } lines
        ? lines.Count == 1 ? lines[0] : lines[0] + " …"
        : "";

    private static void Line(SKCanvas canvas, float left, float top, float right, SKColor colour, float width)
    {
        using var paint = new SKPaint { Color = colour, IsStroke = true, StrokeWidth = width, IsAntialias = true };
        canvas.DrawLine(left, top, right, top, paint);
    }
}
