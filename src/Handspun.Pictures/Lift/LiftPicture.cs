using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;
using Handspun.Pictures.Readings;
using Handspun.Pictures.Runout;
using ScottPlot;

namespace Handspun.Pictures.Lift;

/// <summary>The still picture of one lift record: lift over the crank with every reading, and the readings over time.</summary>
/// <remarks>Where there is no lift it shows the readings over time and says what is missing.</remarks>
public static class LiftPicture
{
    private const float Margin = RecordPage.Margin;

    /// <summary>Lays the picture out; it is drawn when it is written.</summary>
    /// <exception cref="ArgumentException">The parts of the content do not belong together.</exception>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static Picture Draw(LiftPictureContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        content.Check();
        Typefaces.Check();
        var result = content.Result;
        var measured = result.Status == LiftStatus.Measured;
        var notes = RecordPage.Lines(Notes(content));
        var notesHeight = RecordPage.HeightOf(notes);
        var title = TextFit.Plain($"{content.Title}. {content.Subtitle}".TrimEnd('.', ' '));
        var missing = result.Missing ?? "No lift could be measured from these readings.";
        var summary = TextFit.Plain(measured ? $"Lobe lift {LengthText.WithUncertainty(result.LobeLift!.Value.Value, result.LobeLift.Value.U95, content.Unit)}." : missing);
        int[] leftOut = [.. result.Rejected.Select(rejected => rejected.Reading)];
        return new(new(RecordPage.Width, (int)((measured ? 690 : 420) + notesHeight)), title, summary, (canvas, page) =>
        {
            var right = page.Width - Margin;
            var foot = page.Height - notesHeight;
            RecordHeading.Draw(canvas, Heading(content), Margin, right, Margin);
            if (measured)
            {
                var middle = 108 + (foot - 108) * 0.62f;
                LobePanel.Draw(canvas, page, new(Margin + 68, 108, right, middle - 48), [LobeOf(content)], LiftsOf(content, leftOut), result.CheckingLift, Zero(content), content.Top is not null, content.Unit);
                using var readings = new ReadingsPanel(page, new(Margin + 68, middle + 36, right, foot - 58), content, leftOut, null);
                readings.Draw(canvas, "Readings over time");
            }
            else
            {
                var top = RecordPage.DrawMissing(canvas, page, missing);
                using var readings = new ReadingsPanel(page, new(Margin + 68, top, right, foot - 58), content, leftOut, null);
                readings.Draw(canvas, "Readings over time");
            }

            RecordPage.DrawNotes(canvas, page, notes);
        });
    }

    private static HeadingWords Heading(LiftPictureContent content) => new(
        content.Title,
        content.Subtitle,
        content.Result is { Status: LiftStatus.Measured, LobeLift: { } lift } ? $"Lobe lift {LengthText.Of(lift.Value, content.Unit)}" : null,
        content.Result.LobeLift?.U95,
        Wording.Decision(content.Verdict, content.Limit, content.Unit),
        content.Verdict,
        content.Unit);

    private static string Zero(LiftPictureContent content) => content.Top is not null ? "top dead centre" : Wording.Zero(content.Result.Reference);

    // From top dead centre the short way, where that is known; else from the reference.
    private static Lobe LobeOf(LiftPictureContent content)
    {
        var (centre, opens, closes) = (content.Result.Centreline!.Value.Value, content.Result.Opening!.Value.Value, content.Result.Closing!.Value.Value);
        var at = content.Top is { } top ? (centre.AtCrank() - top.Value).ShortWay().Degrees : centre.AtCrank().Degrees;
        return new("lobe", content.Result.CurveMillimetres, centre, at, at + (opens - centre).AtCrank().Degrees, at + (closes - centre).AtCrank().Degrees);
    }

    // Readings count from wherever the plunger was set; the fitted curve says where the base circle is in them.
    private static IReadOnlyList<Coordinates> LiftsOf(LiftPictureContent content, int[] leftOut)
    {
        var (result, lobe) = (content.Result, LobeOf(content));
        var skipped = leftOut.ToHashSet();
        List<(double Cam, double Reading)> kept = [];
        for (var i = 0; i < result.AngleDegrees.Count; i++)
        {
            if (!skipped.Contains(i) && double.IsFinite(result.AngleDegrees[i]))
            {
                kept.Add((result.AngleDegrees[i], content.Millimetres.Span[i]));
            }
        }

        double[] offsets = [.. kept.Select(reading => reading.Reading - result.CurveMillimetres[(int)CamAngle.FromDegrees(reading.Cam).WithinTurn().Degrees % Lobe.Places]).Order()];
        var offset = offsets.Length > 0 ? offsets[offsets.Length / 2] : 0;
        return
        [
            .. kept.Select(reading => new Coordinates(
                lobe.CentreAt + 2 * Math.IEEERemainder(reading.Cam - lobe.Centre.Degrees, 360),
                LengthText.InUnit(reading.Reading - offset, content.Unit))).Where(at => Math.Abs(at.X - lobe.CentreAt) <= 180),
        ];
    }

    private static IEnumerable<string> Notes(LiftPictureContent content)
    {
        var result = content.Result;
        List<string> basis = [string.Create(CultureInfo.InvariantCulture, $"{result.CamTurns:0.0} turns of the cam"), BasisNote.Counted(result.Readings, "reading")];
        if (result.Rejected.Count > 0)
        {
            basis.Add($"{BasisNote.Counted(result.Rejected.Count, "reading")} left out");
        }

        if (result.LobeLift is not null)
        {
            basis.Add("\u00b1 is the expanded uncertainty, k = 2");
        }

        yield return $"{string.Join(" · ", basis)}.";
        if (result.Duration is { } duration)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Open for {duration.Value.AtCrank().Degrees:0.0}° ± {duration.U95.AtCrank().Degrees:0.0}° of the crank, {duration.Value.Degrees:0.0}° of the cam, at {LengthText.Of(result.CheckingLift, content.Unit)} of lift.");
        }

        if (result.ValveLift is { } valve)
        {
            yield return $"Valve lift {LengthText.WithUncertainty(valve.Value, valve.U95, content.Unit)}, play not taken off.";
        }

        foreach (var warning in result.Warnings)
        {
            yield return LiftWarningText.Sentence(warning);
        }
    }
}
