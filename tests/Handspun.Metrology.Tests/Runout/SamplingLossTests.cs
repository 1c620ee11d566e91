using System.Globalization;
using System.Runtime.CompilerServices;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Runout;

public class SamplingLossTests
{
    // 1 − cos(π/N), worked out again by scanning the phase of a sampled sine.
    [Theory]
    [InlineData(12, 0.03407)]
    [InlineData(72, 0.000952)]
    [InlineData(360, 0.0000381)]
    public void Loss_OfEvenReadings_IsTheLargestOverAllPhases(int readings, double share)
    {
        var least = Enumerable.Range(0, 200).Min(phase =>
        {
            var heights = Enumerable.Range(0, readings).Select(i => Math.Cos(2 * Math.PI * (i + phase / 200.0) / readings)).ToList();
            return (heights.Max() - heights.Min()) / 2;
        });

        Assert.Equal(share, SamplingLoss.Of(readings), share * 1e-3);
        Assert.Equal(1 - least, SamplingLoss.Of(readings), share * 1e-3);
    }

    // What the note says that a hand loses must be what the method works out.
    [Fact]
    public void Loss_InTheNoteOnChoosingAnIndicator_IsThis()
    {
        var rows = File.ReadLines(Path.Combine(HardwareNotes(), "choosing.md"))
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal) && char.IsAsciiDigit(line[2]))
            .Select(line => line.Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToList();
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            foreach (var (column, seconds) in new[] { (1, 1), (2, 2), (3, 4) })
            {
                var readings = double.Parse(row[0], CultureInfo.InvariantCulture) * seconds;
                Assert.Equal(readings.ToString(CultureInfo.InvariantCulture), row[column]);
                Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"{100 * SamplingLoss.Of(readings):0.00} %"), row[column + 3]);
            }
        }
    }

    private static string HardwareNotes([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "hardware-notes");

    [Fact]
    public void Loss_OfThreeLobes_IsThatOfAThirdOfTheReadings() => Assert.Equal(SamplingLoss.Of(12), SamplingLoss.Of(36, lobes: 3));

    [Fact]
    public void Loss_WithTwoReadingsALobe_IsAllOfIt() => Assert.Equal(1, SamplingLoss.Of(4, lobes: 2));
}
