using System.Diagnostics;

namespace Handspun.Pictures.Tests.Report;

/// <summary>Opens a PDF by programs that are not ours (poppler).</summary>
internal static class Poppler
{
    /// <summary>What one of its programs prints about a PDF.</summary>
    /// <param name="program">Such as <c>pdftotext</c>.</param>
    /// <param name="pdf">The document.</param>
    /// <param name="arguments">Its arguments; <c>FILE</c> stands for the document's file, <c>FOLDER</c> for a folder of its own.</param>
    public static async Task<string> AskAsync(string program, byte[] pdf, params string[] arguments) => (await RunAsync(program, pdf, arguments)).Said;

    /// <summary>Each page as an image.</summary>
    public static async Task<IReadOnlyList<byte[]>> PagesAsync(byte[] pdf, int dotsPerInch) =>
        (await RunAsync("pdftoppm", pdf, ["-png", "-r", dotsPerInch.ToString(System.Globalization.CultureInfo.InvariantCulture), "FILE", "FOLDER/page"])).Files;

    private static async Task<(string Said, IReadOnlyList<byte[]> Files)> RunAsync(string program, byte[] pdf, string[] arguments)
    {
        var folder = Directory.CreateTempSubdirectory("handspun-pdf").FullName;
        try
        {
            var file = Path.Combine(folder, "report.pdf");
            await File.WriteAllBytesAsync(file, pdf);
            var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in arguments)
            {
                start.ArgumentList.Add(argument.Replace("FILE", file, StringComparison.Ordinal).Replace("FOLDER", folder, StringComparison.Ordinal));
            }

            using var process = Process.Start(start)!;
            var complaint = process.StandardError.ReadToEndAsync();
            var said = await process.StandardOutput.ReadToEndAsync();
            await process.WaitForExitAsync();
            Assert.Equal("", await complaint);   // poppler says there what does not hold in a document
            Assert.Equal(0, process.ExitCode);
            return (said, [.. Directory.EnumerateFiles(folder, "page*.png").Order(StringComparer.Ordinal).Select(File.ReadAllBytes)]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
