using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Handspun.Archives;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;
using Handspun.Pictures.Tests.Report;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Handspun.Tests.Archives;

/// <summary>Two stations' folders: one with a job and its files, one to take it in.</summary>
internal sealed class ArchiveBench : IAsyncDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("handspun-archive-").FullName;
    private readonly ServiceProvider _services;

    private ArchiveBench()
    {
        From = DataFolder.Take(Path.Combine(_folder, "from"));
        To = DataFolder.Take(Path.Combine(_folder, "to"));
        _services = new ServiceCollection().AddSingleton(TimeProvider.System).AddJobStore(To.Store).BuildServiceProvider();
    }

    public DataFolder From { get; }

    public DataFolder To { get; }

    public Job Job { get; } = ReportedJob.Of(5);

    public JobStore Store => _services.GetRequiredService<JobStore>();

    public string Archive => Path.Combine(_folder, "job.zip");

    /// <summary>A job with a journal and a picture for each record, and its photos; packed.</summary>
    public static async Task<ArchiveBench> PackedAsync()
    {
        var bench = new ArchiveBench();
        await StoreSchema.BringUpToDateAsync(bench._services.GetRequiredService<IDbContextFactory<JobsContext>>(), CancellationToken.None);
        foreach (var record in bench.Job.Points.SelectMany(point => point.Records))
        {
            Directory.CreateDirectory(bench.From.Record(record.Id));
            await File.WriteAllTextAsync(Path.Combine(bench.From.Record(record.Id), "journal.jsonl.gz"), $"raw bytes of {record.Id}");
            await File.WriteAllTextAsync(Path.Combine(bench.From.Record(record.Id), "picture.svg"), "<svg/>");
        }

        Directory.CreateDirectory(bench.From.Photos(bench.Job.Number));
        await File.WriteAllTextAsync(Path.Combine(bench.From.Photos(bench.Job.Number), $"{0:x32}.jpg"), "a photo");
        await using (var into = File.Create(bench.Archive))
        {
            JobArchive.Write(bench.Job, bench.From, LengthUnit.Inch, ReportedJob.Start, into);
        }

        return bench;
    }

    public Task<Job> TakeInAsync(string? number = null) => new ArchiveIntake(Store, To).TakeAsync(Archive, number, CancellationToken.None);

    /// <summary>The refusal; whatever it was, nothing may have been taken in.</summary>
    public async Task<string> RefusalAsync(string? number = null)
    {
        var refusal = await Assert.ThrowsAsync<ArchiveRefusalException>(() => TakeInAsync(number));
        Assert.Empty(Directory.EnumerateFileSystemEntries(To.Records));
        Assert.Empty(Directory.EnumerateFileSystemEntries(To.Jobs));
        Assert.False(Directory.Exists(Path.Combine(To.Root, "incoming")));
        Assert.Empty(await Store.NewestAsync(9, CancellationToken.None));
        return refusal.Message;
    }

    /// <summary>Changes the archive's files; with a manifest that fits again, or as somebody would who only changes a file.</summary>
    public void Alter(Action<Dictionary<string, byte[]>> change, bool mendManifest = false, Func<string, string>? manifest = null)
    {
        Dictionary<string, byte[]> files;
        using (var zip = ZipFile.OpenRead(Archive))
        {
            files = zip.Entries.ToDictionary(entry => entry.FullName, entry =>
            {
                using var from = entry.Open();
                using var into = new MemoryStream();
                from.CopyTo(into);
                return into.ToArray();
            });
        }

        var said = files[ArchiveManifest.File];
        files.Remove(ArchiveManifest.File);
        change(files);
        if (mendManifest)
        {
            said = JsonSerializer.SerializeToUtf8Bytes(
                new ArchiveManifest(ArchiveManifest.Name, ArchiveManifest.Newest, Job.Number, ReportedJob.Start, [.. files.Select(file => new ArchivedFile(file.Key, file.Value.Length, Convert.ToHexStringLower(SHA256.HashData(file.Value))))]),
                WireJson.Options);
        }

        File.Delete(Archive);
        using var written = ZipFile.Open(Archive, ZipArchiveMode.Create);
        foreach (var (name, bytes) in files.Append(new(ArchiveManifest.File, manifest is null ? said : Encoding.UTF8.GetBytes(manifest(Encoding.UTF8.GetString(said))))))
        {
            using var into = written.CreateEntry(name).Open();
            into.Write(bytes);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        From.Dispose();
        To.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
