using Handspun.Jobs.Reports;

namespace Handspun.Pictures.Report;

/// <summary>What people decided, found, ticked and left, after the results.</summary>
internal static class WorkSheets
{
    public static void Put(Sheets sheets, JobReport report, IReportPictures pictures)
    {
        var photos = new PaperPhotos(
            pictures,
            report.Findings.Sum(finding => finding.Photos.Count) + report.Parts.Sum(part => part.Photos.Count) + report.Checks.Sum(check => check.Photos.Count));
        sheets.Break();
        if (report.Decisions.Count > 0)
        {
            CustomerSheet.PutSection(sheets, ReportWords.Decisions);
            ReportTable.Put(
                sheets,
                [("At", 3), ("Decided", 1.6f), ("Why", 4), ("The result then", 4.6f), ("By", 3)],
                report.Decisions.Select(decision => (IReadOnlyList<string>)[decision.Title, decision.Choice, decision.Why, decision.Result, decision.By]));
        }

        if (report.Findings.Count > 0)
        {
            CustomerSheet.PutSection(sheets, ReportWords.Findings);
            foreach (var finding in report.Findings)
            {
                sheets.Need(finding.Photos.Count > 0 ? 190 : 40);
                sheets.Text(finding.Title, Type.Strong);
                sheets.Text(finding.By, Type.Label);
                PhotoRow.Put(sheets, finding.Photos, photos);
                sheets.Gap(8);
            }
        }

        if (report.Parts.Count > 0)
        {
            CustomerSheet.PutSection(sheets, ReportWords.Parts);
            ReportTable.Put(
                sheets,
                [("Part and place", 3.4f), ("How it sat", 3.4f), ("Becomes", 1.8f), ("Why", 3.4f), ("Decided by", 3)],
                report.Parts.Select(part => (IReadOnlyList<string>)[part.Name, part.Faced, part.Choice, part.Why, part.By]));
            PutPhotos(sheets, photos, report.Parts.Select(part => (part.Name, part.Photos)));
        }

        if (report.Checks.Count > 0)
        {
            CustomerSheet.PutSection(sheets, ReportWords.Checks);
            ReportTable.Put(
                sheets,
                [("Check", 4.6f), ("State", 1.4f), ("Words", 4.6f), ("By", 3)],
                report.Checks.Select(check => (IReadOnlyList<string>)[check.Title, check.State, check.Words, check.By]));
            PutPhotos(sheets, photos, report.Checks.Select(check => (check.Title, check.Photos)));
        }

        PutList(sheets, ReportWords.Left, report.Left);
        PutList(sheets, ReportWords.Cautions, [.. report.Cautions, ReportWords.ManualFirst]);
    }

    private static void PutPhotos(Sheets sheets, PaperPhotos paper, IEnumerable<(string Title, IReadOnlyList<ReportedPhoto> Photos)> things)
    {
        foreach (var (title, photos) in things.Where(thing => thing.Photos.Count > 0))
        {
            sheets.Gap(8);
            sheets.Need(180);
            sheets.Text(title, Type.SmallStrong);
            PhotoRow.Put(sheets, photos, paper);
        }
    }

    private static void PutList(Sheets sheets, string title, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        CustomerSheet.PutSection(sheets, title);
        foreach (var line in lines)
        {
            var text = Passage.Of(line, sheets.Width - 12, Type.Small);
            sheets.Put(text.Height + 2, (canvas, top) =>
            {
                Passage.Of("–", 10, Type.Small).Draw(canvas, sheets.Left, top);
                text.Draw(canvas, sheets.Left + 12, top);
            });
        }
    }
}
