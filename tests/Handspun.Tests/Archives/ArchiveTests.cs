using System.Text;
using System.Text.Json.Nodes;
using Handspun.Archives;
using Handspun.Jobs.Archives;

namespace Handspun.Tests.Archives;

public sealed class ArchiveTests
{
    [Fact]
    public async Task Archive_TakenInElsewhere_IsTheSameJobWithTheSameFiles()
    {
        await using var bench = await ArchiveBench.PackedAsync();

        await bench.TakeInAsync();

        var there = await bench.Store.FindAsync(bench.Job.Number, CancellationToken.None);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(JobFile.Write(bench.Job)), JsonNode.Parse(JobFile.Write(there!))), "The job is another one now.");
        Assert.Equal(bench.Job.Points.SelectMany(point => point.Records).Count(), Directory.EnumerateDirectories(bench.To.Records).Count());
        Assert.All(bench.Job.Points.SelectMany(point => point.Records), record => Assert.Equal($"raw bytes of {record.Id}", File.ReadAllText(bench.To.JournalOf(record.Id))));
        Assert.Equal("a photo", await File.ReadAllTextAsync(Path.Combine(bench.To.Photos(bench.Job.Number), $"{0:x32}.jpg")));
        Assert.False(Directory.Exists(Path.Combine(bench.To.Root, "incoming")));
    }

    [Fact]
    public async Task Archive_OfAJobThatIsThere_IsRefused_AndWhatIsThereStays()
    {
        await using var bench = await ArchiveBench.PackedAsync();
        await bench.TakeInAsync();

        var same = await Assert.ThrowsAsync<ArchiveRefusalException>(() => bench.TakeInAsync());
        var renumbered = await Assert.ThrowsAsync<ArchiveRefusalException>(() => bench.TakeInAsync("2026-0099"));

        Assert.Contains("there is a job 2026-0042 here already", same.Message, StringComparison.Ordinal);
        Assert.Contains("its record rec-00 is here already, in job 2026-0042", renumbered.Message, StringComparison.Ordinal);
        Assert.Equal("raw bytes of rec-00", await File.ReadAllTextAsync(bench.To.JournalOf("rec-00")));
        Assert.Single(await bench.Store.NewestAsync(9, CancellationToken.None));
    }

    [Fact]
    public async Task Archive_CanBeTakenInUnderAnotherNumber()
    {
        await using var bench = await ArchiveBench.PackedAsync();

        Assert.Equal("2026-0099", (await bench.TakeInAsync("2026-0099")).Number);
        Assert.NotNull(await bench.Store.FindAsync("2026-0099", CancellationToken.None));
    }

    [Fact]
    public async Task Archive_WhoseFileWasAltered_IsRefused()
    {
        await using var bench = await ArchiveBench.PackedAsync();
        bench.Alter(files => files["records/rec-01/journal.jsonl.gz"][3] ^= 1);

        Assert.Contains("'records/rec-01/journal.jsonl.gz' is not what its manifest.json says", await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("job.json", "is not what its manifest.json lists")]
    [InlineData("records/rec-01/journal.jsonl.gz", "is not what its manifest.json lists")]
    public async Task Archive_ThatLacksAFile_IsRefused(string file, string sentence)
    {
        await using var bench = await ArchiveBench.PackedAsync();
        bench.Alter(files => files.Remove(file));

        Assert.Contains(sentence, await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../evil.sh")]
    [InlineData("records/../../../evil")]
    [InlineData("/etc/evil")]
    [InlineData("records/rec-00/picture.svg/../../x")]
    [InlineData("records\\rec-00\\journal.jsonl")]
    [InlineData("readme.txt")]
    public async Task Archive_WithAFileThatLeadsElsewhere_IsRefused(string name)
    {
        await using var bench = await ArchiveBench.PackedAsync();
        bench.Alter(files => files[name] = [1], mendManifest: true);

        Assert.Contains("does not belong into an archive of a job", await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_WithFilesOfARecordThatTheJobDoesNotHave_IsRefused()
    {
        await using var bench = await ArchiveBench.PackedAsync();
        bench.Alter(files => files["records/somebody-elses/picture.svg"] = [1], mendManifest: true);

        Assert.Contains("belongs to nothing in the job", await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_ThatWouldFillTheDisk_IsRefused()
    {
        await using var bench = await ArchiveBench.PackedAsync();
        bench.Alter(files => files["records/rec-00/picture.png"] = new byte[64 << 20], mendManifest: true);   // 64 MB of nothing, packed to some 65 kB

        Assert.Contains("far larger than any job", await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_OfANewerVersion_IsRefused()
    {
        await using var bench = await ArchiveBench.PackedAsync();
        bench.Alter(_ => { }, manifest: said => said.Replace("\"version\":1", "\"version\":2", StringComparison.Ordinal));

        Assert.Contains("it comes from a newer version of this program: bring this station up to date first.", await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"version\": 1", "\"version\": 2", "newer version")]
    [InlineData("\"deed\": \"ticked\"", "\"deed\": \"sung-to\"", "does not hold")]
    [InlineData("\"customer\":", "\"custommer\":", "does not hold")]
    [InlineData("2026-0042", "../../0042", "no number of this program's kind")]
    public async Task Job_ThatThisVersionCannotRead_IsRefused(string from, string to, string sentence)
    {
        await using var bench = await ArchiveBench.PackedAsync();
        bench.Alter(files =>
        {
            var json = Encoding.UTF8.GetString(files["job.json"]);
            Assert.Contains(from, json, StringComparison.Ordinal);
            var at = json.IndexOf(from, StringComparison.Ordinal);
            files["job.json"] = Encoding.UTF8.GetBytes(json[..at] + to + json[(at + from.Length)..]);
        }, mendManifest: true);

        Assert.Contains(sentence, await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("no zip")]
    public async Task File_ThatIsTooShortForAnArchive_IsRefused(string text)
    {
        await using var bench = await ArchiveBench.PackedAsync();
        await File.WriteAllTextAsync(bench.Archive, text);

        Assert.Contains("it is no archive, or it was damaged on the way", await bench.RefusalAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_ThatWasCutOff_IsRefused()
    {
        await using var bench = await ArchiveBench.PackedAsync();
        await File.WriteAllBytesAsync(bench.Archive, (await File.ReadAllBytesAsync(bench.Archive))[..^400]);

        var refusal = await Assert.ThrowsAsync<ArchiveRefusalException>(() => bench.TakeInAsync());
        Assert.Contains("damaged on the way", refusal.Message, StringComparison.Ordinal);
    }
}
