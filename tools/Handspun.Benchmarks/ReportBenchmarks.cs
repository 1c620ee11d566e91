using BenchmarkDotNet.Attributes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Pictures.Report;
using Handspun.Pictures.Tests.Report;

namespace Handspun.Benchmarks;

/// <summary>What a report costs as a PDF: from a job in memory, its pictures as they lie in the records' folders.</summary>
[MemoryDiagnoser]
public class ReportBenchmarks
{
    private readonly Job _job = ReportedJob.Of(30, photos: 20);
    private Kept _pictures = null!;
    private int _bytes;

    /// <summary>Draws the pictures once, as filing does.</summary>
    [GlobalSetup]
    public void DrawPictures() => _pictures = new(_job);

    /// <summary>The yardstick: the words without any picture.</summary>
    [Benchmark(Baseline = true)]
    public int WordsAlone() => Write(new None());

    /// <summary>All of it: 29 pictures and 20 photos.</summary>
    [Benchmark]
    public int WithPictures() => _bytes = Write(_pictures);

    /// <summary>Tells how large the document is.</summary>
    [GlobalCleanup]
    public void Tell() => Console.WriteLine($"// The PDF has {_bytes} bytes.");

    private int Write(IReportPictures pictures)
    {
        using var into = new MemoryStream();
        PdfReport.Write(ReportedJob.ReportOf(_job), pictures, PaperSize.A4, ReportedJob.Clock.Now, into);
        return (int)into.Length;
    }

    private sealed class Kept(Job job) : IReportPictures
    {
        private readonly ReportPictures _drawing = new();
        private readonly Dictionary<string, byte[]> _drawn = job.Points.SelectMany(point => point.Records).ToDictionary(record => record.Id, record => new ReportPictures().PictureOf(record.Id)!);

        public byte[]? PictureOf(string record) => _drawn[record];

        public byte[]? PhotoOf(PhotoAdded photo) => _drawing.PhotoOf(photo);
    }

    private sealed class None : IReportPictures
    {
        public byte[]? PictureOf(string record) => null;

        public byte[]? PhotoOf(PhotoAdded photo) => null;
    }
}
