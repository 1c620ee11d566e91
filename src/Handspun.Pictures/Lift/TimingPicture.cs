using Handspun.Metrology.Decision;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;

namespace Handspun.Pictures.Lift;

/// <summary>The still picture of both lobes of a cylinder over the crank, with what the cam's card says laid over.</summary>
public static class TimingPicture
{
    private const float Margin = RecordPage.Margin;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(TimingPictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        Typefaces.Check();
        var notes = RecordPage.Lines([content.Sentence]);
        var notesHeight = RecordPage.HeightOf(notes);
        var decision = content.Verdict switch
        {
            Verdict.Within => "As the card says",
            Verdict.Over => "Not as the card says",
            Verdict.Undecided => "Too close to call",
            _ => "No card to lay it beside",
        };
        return new(new(RecordPage.Width, (int)(470 + notesHeight)), TextFit.Plain($"{content.Title}. {content.Subtitle}".TrimEnd('.', ' ')), TextFit.Plain(content.Sentence), (canvas, page) =>
        {
            var right = page.Width - Margin;
            RecordHeading.Draw(canvas, new HeadingWords(content.Title, content.Subtitle, content.Separation, null, decision, content.Verdict, content.Unit), Margin, right, Margin);
            LobePanel.Draw(
                canvas, page, new(Margin + 68, 108, right, page.Height - notesHeight - 58), [content.Intake, content.Exhaust], [], content.CheckingLift,
                content.FromTop ? "top dead centre" : "the middle between the lobes", content.FromTop, content.Unit);
            RecordPage.DrawNotes(canvas, page, notes);
        });
    }
}
