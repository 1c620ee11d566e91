using System.IO.Compression;
using System.Text.Json;
using System.Text.RegularExpressions;
using Handspun.Jobs.Archives;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Archives;

/// <summary>Takes an archive of a job into this station: all of it, or nothing.</summary>
/// <remarks>
/// Every file is unpacked beside the station's own and held against the manifest before anything is put in its place; the store comes
/// last, so that a job that is in it has all of its files.
/// </remarks>
internal sealed partial class ArchiveIntake(JobStore store, DataFolder data)
{
    private const int MostFiles = 50_000;
    private const long MostManifestBytes = 16 << 20;
    private const long MostBytes = 8L << 30;
    private const int MostTimesPacked = 100;   // pictures and journals pack to a fifth at most; a hundredth is a trap
    private const long AlwaysAllowed = 10 << 20;

    /// <summary>Takes in a file.</summary>
    /// <param name="file">The archive.</param>
    /// <param name="number">The number that the job gets here; null leaves its own.</param>
    /// <param name="cancellationToken">Stops before the job is in the store.</param>
    /// <exception cref="ArchiveRefusalException">It cannot be taken in; nothing was.</exception>
    public async Task<Job> TakeAsync(string file, string? number, CancellationToken cancellationToken)
    {
        FileStream archive;
        try
        {
            archive = File.OpenRead(file);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new ArchiveRefusalException($"There is no file {file}: give the archive that 'handspun pack' wrote.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new ArchiveRefusalException($"{file} cannot be read: {e.Message}");
        }

        await using (archive)
        {
            return await TakeAsync(archive, file, number, cancellationToken);
        }
    }

    /// <summary>Takes in what was sent.</summary>
    /// <param name="archive">The archive, from its beginning; it can seek.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="number">The number that the job gets here; null leaves its own.</param>
    /// <param name="cancellationToken">Stops before the job is in the store.</param>
    /// <exception cref="ArchiveRefusalException">It cannot be taken in; nothing was.</exception>
    public async Task<Job> TakeAsync(Stream archive, string name, string? number, CancellationToken cancellationToken)
    {
        if (number is not null && !JobNumber().IsMatch(number))
        {
            throw new ArchiveRefusalException($"'{number}' is no number of a job: give the year and a running number, such as 2026-0042.");
        }

        var beside = Path.Combine(data.Root, "incoming", Guid.CreateVersion7().ToString("N"));
        try
        {
            using var zip = Open(archive);
            var manifest = ManifestOf(zip, archive.Length);
            foreach (var listed in manifest.Files)
            {
                Unpack(zip, listed, beside);
            }

            var job = JobFile.Read(await File.ReadAllBytesAsync(Path.Combine(beside, ArchiveManifest.JobFile), cancellationToken), number);
            RefuseWhatDoesNotBelong(job, manifest);
            return await PutInPlaceAsync(job, beside, cancellationToken);
        }
        catch (Exception e) when (e is JobFileException or JobThereException)
        {
            throw new ArchiveRefusalException($"{name} was not taken in: {e.Message}") { IsThere = e is JobThereException };
        }
        catch (InvalidDataException)
        {
            throw new ArchiveRefusalException($"{name} was not taken in: it is no archive, or it was damaged on the way. Pack it again and send it again.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new ArchiveRefusalException($"{name} was not taken in: {e.Message}");
        }
        finally
        {
            if (Directory.Exists(beside))
            {
                Directory.Delete(beside, recursive: true);
            }

            if (Directory.GetParent(beside) is { Exists: true } around && !around.EnumerateFileSystemInfos().Any())
            {
                around.Delete();
            }
        }
    }

    // The library looks for the end of the archive from behind; each kind of stream refuses in its own way what is too short to have one.
    private static ZipArchive Open(Stream archive)
    {
        try
        {
            return new(archive, ZipArchiveMode.Read, leaveOpen: true);
        }
        catch (Exception e) when (e is IOException or ArgumentException)
        {
            throw new InvalidDataException("It is too short for an archive.", e);
        }
    }

    private static ArchiveManifest ManifestOf(ZipArchive zip, long packed)
    {
        var entry = zip.GetEntry(ArchiveManifest.File) ?? throw new JobFileException("it has no manifest.json, so it is no archive of a job.");
        using var read = new MemoryStream();
        using (var from = entry.Open())
        {
            if (JobArchive.Copy(entry.FullName, from, read, MostManifestBytes).Bytes > MostManifestBytes)
            {
                throw new JobFileException("its manifest.json is far too large.");
            }
        }

        ArchiveManifest manifest;
        try
        {
            using var head = JsonDocument.Parse(read.ToArray());
            if (head.RootElement.GetProperty("format").GetString() != ArchiveManifest.Name)
            {
                throw new JobFileException("its manifest.json is that of something else.");
            }

            if (head.RootElement.GetProperty("version").GetInt32() > ArchiveManifest.Newest)
            {
                throw new JobFileException("it comes from a newer version of this program: bring this station up to date first.");
            }

            manifest = head.RootElement.Deserialize<ArchiveManifest>(WireJson.Options)!;
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw new JobFileException("its manifest.json does not hold; it was altered or damaged.");
        }

        var names = zip.Entries.Select(inside => inside.FullName).Where(name => name != ArchiveManifest.File).ToList();
        var listed = manifest.Files.Select(file => file.Path).ToList();
        if (names.Concat(listed).FirstOrDefault(name => !ArchiveManifest.MayHold(name)) is { } foreign)
        {
            throw new JobFileException($"'{foreign}' does not belong into an archive of a job.");
        }

        if (!names.Order(StringComparer.Ordinal).SequenceEqual(listed.Order(StringComparer.Ordinal)) || !listed.Contains(ArchiveManifest.JobFile) || listed.Distinct().Count() != listed.Count)
        {
            throw new JobFileException("what is in it is not what its manifest.json lists; it was altered.");
        }

        if (listed.Count > MostFiles || manifest.Files.Any(file => file.Bytes < 0 || file.Bytes > MostBytes)
            || manifest.Files.Sum(file => file.Bytes) > Math.Min(MostBytes, AlwaysAllowed + MostTimesPacked * packed))
        {
            throw new JobFileException("it would become far larger than any job when it is unpacked.");
        }

        return manifest;
    }

    private static void Unpack(ZipArchive zip, ArchivedFile listed, string beside)
    {
        var path = Path.Combine(beside, listed.Path);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var from = zip.GetEntry(listed.Path)!.Open();
        using var into = File.Create(path);
        if (JobArchive.Copy(listed.Path, from, into, listed.Bytes) != listed)
        {
            throw new JobFileException($"'{listed.Path}' is not what its manifest.json says; it was altered or damaged.");
        }
    }

    private static void RefuseWhatDoesNotBelong(Job job, ArchiveManifest manifest)
    {
        if (!JobNumber().IsMatch(job.Number))
        {
            throw new JobFileException("its job has no number of this program's kind.");
        }

        var records = job.Points.SelectMany(point => point.Records).Select(record => $"records/{record.Id}/").ToHashSet();
        var photos = job.Book.Select(entry => entry.Deed).OfType<PhotoAdded>().Select(photo => $"photos/{photo.Photo}").ToHashSet();
        if (manifest.Files.FirstOrDefault(file => !BelongsTo(file.Path)) is { } stray)
        {
            throw new JobFileException($"'{stray.Path}' belongs to nothing in the job; it was altered.");
        }

        bool BelongsTo(string path) => path.Split('/') switch
        {
            ["records", var record, _] => records.Contains($"records/{record}/"),
            ["photos", var photo] => photos.Contains($"photos/{photo.Replace(".small.jpg", "", StringComparison.Ordinal)}"),
            _ => true,
        };
    }

    private async Task<Job> PutInPlaceAsync(Job job, string beside, CancellationToken cancellationToken)
    {
        if (await store.FindAsync(job.Number, cancellationToken) is not null)
        {
            throw new JobThereException($"there is a job {job.Number} here already. If it is another one, give the new one another number.");
        }

        foreach (var record in job.Points.SelectMany(point => point.Records))
        {
            if (await store.FindRecordAsync(record.Id, cancellationToken) is { } there)
            {
                throw new JobThereException($"its record {record.Id} is here already, in job {there.Job.Number}: it is the same work.");
            }
        }

        var placed = new List<string>();
        try
        {
            foreach (var (from, to) in Folders(job, beside).Where(move => Directory.Exists(move.From)))
            {
                if (Directory.Exists(to))
                {
                    Directory.Delete(to, recursive: true);   // no job in the store has it: left by an intake that was cut short
                }

                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                Directory.Move(from, to);
                placed.Add(to);
            }

            return await store.TakeInAsync(job, cancellationToken);
        }
        catch
        {
            placed.ForEach(folder => Directory.Delete(folder, recursive: true));
            throw;
        }
    }

    private IEnumerable<(string From, string To)> Folders(Job job, string beside) =>
        job.Points.SelectMany(point => point.Records).Select(record => (Path.Combine(beside, "records", record.Id), data.Record(record.Id)))
            .Append((Path.Combine(beside, "photos"), data.Photos(job.Number)));

    [GeneratedRegex(@"^\d{4}-\d{4,6}\z")]
    private static partial Regex JobNumber();
}

/// <summary>An archive that cannot be taken in; nothing was.</summary>
/// <param name="sentence">Why, and what to do.</param>
internal sealed class ArchiveRefusalException(string sentence) : Exception(sentence)
{
    /// <summary>Whether the job, or a record of it, is here already.</summary>
    public bool IsThere { get; init; }
}
