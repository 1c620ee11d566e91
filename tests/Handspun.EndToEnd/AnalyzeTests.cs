using System.Text.Json;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

/// <summary>Captures in files, from the command line.</summary>
public sealed class AnalyzeTests
{
    [Fact]
    public async Task Json_OfSeveralFiles_IsOneObjectALineInOrder()
    {
        await using var workshop = new Workshop();
        var broken = Path.Combine(workshop.Folder, "broken.csv");
        await File.WriteAllTextAsync(broken, "time_s,channel,value\n0,reading,NaN\n");
        var sample = Path.Combine(Programs.SampleCaptures, "text-line-pinion-runout.jsonl");

        var (code, output, errors) = await RunningProgram.RunAsync(Programs.Handspun, "analyze", "--json", sample, broken);

        Assert.Equal(1, code);
        Assert.Equal("", errors);
        var lines = output.Split('\n').Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.Equal(
            ["file", "point", "status", "readings", "turns", "tir_mm", "tir_u95_mm", "eccentricity_mm", "roundness_mm", "high_spot_deg", "high_spot_u95_deg", "low_spot_deg", "verdict", "warnings"],
            lines[0].EnumerateObject().Select(property => property.Name).Take(14));
        Assert.Equal((sample, "ok", "within"), (lines[0].GetProperty("file").GetString(), lines[0].GetProperty("status").GetString(), lines[0].GetProperty("verdict").GetString()));
        Assert.Equal("rejected", lines[1].GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, lines[1].GetProperty("tir_mm").ValueKind);
        Assert.StartsWith("Line 2:", lines[1].GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_OfAGoodFile_EndsWithZero()
    {
        var sample = Path.Combine(Programs.SampleCaptures, "text-line-pinion-runout.jsonl");

        var (code, output, _) = await RunningProgram.RunAsync(Programs.Handspun, "analyze", sample, "--unit", "mm", "--at-most", "0.05 mm");

        Assert.Equal(0, code);
        Assert.Contains("over the limit (at most 0.050 mm", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Files_ThatCannotBeMeasured_EachGetASentenceWithTheirLine()
    {
        (string Text, string Reason)[] files =
        [
            ("# unit = mm\ntime_s,channel,value\n0,reading,0\n# unit = in\n0.1,reading,0.01\n", "Line 4: the key 'unit' stands among the rows"),
            ("# pont = pinion-runout\ntime_s,channel,value\n0,reading,0\n", "Line 1: there is no key 'pont'"),
            ("time_s,channel,value\n0,reading,0\n0.2,reading,0\n0.1,reading,0\n", "Line 4: the time of 'reading' runs backwards"),
            ("time_s,channel,value\n0,reading,0\n0.1,reading,Infinity\n", "Line 3: the value 'Infinity' is not finite"),
            ("time_s,channel,value\n0,gauge,0\n", "Line 2: there is no channel 'gauge'"),
            ("", "The file is empty"),
            ("time_s,channel,value\n0,reading,0.01\n", "Only 1 readings came in"),
            (string.Concat(Enumerable.Range(0, 300).Select(i => FormattableString.Invariant($"{0.01 * i:0.00},reading,0.010\n")).Prepend("time_s,channel,value\n")), "The readings do not move"),
        ];
        await using var workshop = new Workshop();
        var paths = files.Select((file, i) => Path.Combine(workshop.Folder, $"bad-{i}.csv")).ToArray();
        foreach (var (path, file) in paths.Zip(files))
        {
            await File.WriteAllTextAsync(path, file.Text);
        }

        var (code, output, errors) = await RunningProgram.RunAsync(Programs.Handspun, ["analyze", "--json", .. paths]);

        Assert.Equal((1, ""), (code, errors));
        var answers = output.Split('\n').Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.Equal(paths, answers.Select(answer => answer.GetProperty("file").GetString()));
        Assert.All(answers, answer => Assert.Equal(("rejected", JsonValueKind.Null), (answer.GetProperty("status").GetString(), answer.GetProperty("tir_mm").ValueKind)));
        Assert.All(files.Zip(answers), pair => Assert.StartsWith(pair.First.Reason, pair.Second.GetProperty("reason").GetString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("analyze")]
    [InlineData("analyze", "x.csv", "--at-most", "0.005")]
    [InlineData("analyze", "x.csv", "--no-such-option")]
    public async Task Usage_ThatIsWrong_EndsWithTwo(params string[] arguments)
    {
        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, arguments);

        Assert.Equal(2, code);
        Assert.NotEqual("", errors);
    }
}
