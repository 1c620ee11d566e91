using Handspun.Filing;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Reports;
using Handspun.Pages.Reports;
using Handspun.Photos;
using Handspun.Pictures.Report;
using Handspun.Station;

namespace Handspun.Reports;

/// <summary>Makes reports of jobs: as words, as a page, as a PDF.</summary>
internal sealed class ReportDesk(RecordFolder records, PhotoFolder photos, StationOptions options, TimeProvider time)
{
    /// <summary>The paper that goes with the shop's unit.</summary>
    public PaperSize UsualPaper => options.Unit.IsInch ? PaperSize.Letter : PaperSize.A4;

    /// <summary>What the report says.</summary>
    public JobReport Of(Job job) => JobReport.Of(job, options.Unit, new ReportClock(time.LocalTimeZone, time.GetUtcNow()));

    /// <summary>The report as a page shows it.</summary>
    public ReportView ViewOf(Job job)
    {
        var report = Of(job);
        return new(report, report.Results.Select(result => result.Record).Where(record => File.Exists(records.SvgOf(record))).ToHashSet());
    }

    /// <summary>The report as a PDF.</summary>
    public byte[] Pdf(Job job, PaperSize paper)
    {
        using var into = new MemoryStream();
        PdfReport.Write(Of(job), new JobPictures(job, records, photos), paper, time.GetUtcNow(), into);
        return into.ToArray();
    }
}
