using System.Globalization;
using System.Text.RegularExpressions;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

/// <summary>The one command on a fresh machine.</summary>
public sealed partial class DemoTests
{
    private const double TrueTirMillimetres = 0.0815;   // what the demo tells its virtual shaft

    [Fact]
    public async Task Once_PrintsOneBlockWhoseRunoutCoversTheShaftsTruth()
    {
        await using var workshop = new Workshop();

        var (code, output, errors) = await RunningProgram.RunAsync(Programs.Handspun, "demo", "--once", "--data", workshop.Data, "--unit", "mm");

        Assert.True(code == 0, output + errors);
        Assert.Equal("", errors);
        var runout = Runout().Match(output);
        Assert.True(runout.Success, output);
        var (tir, uncertainty) = (Number(runout.Groups["tir"].Value), Number(runout.Groups["u"].Value));
        Assert.InRange(TrueTirMillimetres, tir - uncertainty, tir + uncertainty);
        Assert.Contains("WITHIN THE LIMIT", output, StringComparison.Ordinal);
        foreach (var label in new[] { "Job", "Bike", "Point", "Turns", "Limit", "Verdict" })
        {
            Assert.Contains($"\n{label} ", output, StringComparison.Ordinal);
        }

        Assert.True(File.Exists(Path(output, "Record")));
        Assert.True(File.Exists(Path(output, "Picture")));
    }

    private static string Path(string output, string label) =>
        output.Split('\n').First(line => line.StartsWith(label, StringComparison.Ordinal))[label.Length..].Trim();

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^Runout\s+(?<tir>[\d.]+) mm ± (?<u>[\d.]+) mm", RegexOptions.Multiline)]
    private static partial Regex Runout();
}
