using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Handspun.Jobs.Archives;
using Handspun.Jobs.Book;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Archives;

/// <summary>Packs everything of a job into one archive (ZIP) that another station can take in.</summary>
internal static class JobArchive
{
    /// <summary>Writes the archive.</summary>
    /// <param name="job">The job with all that belongs to it.</param>
    /// <param name="data">The folder in which its files lie.</param>
    /// <param name="unit">The unit of texts in the table.</param>
    /// <param name="now">When it is made.</param>
    /// <param name="into">Where it is written.</param>
    public static void Write(Job job, DataFolder data, LengthUnit unit, DateTimeOffset now, Stream into)
    {
        using var zip = new ZipArchive(into, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8);
        var files = new List<ArchivedFile>();
        using var table = new StringWriter();
        RecordsCsv.Write(RecordRow.Of(job, unit), table);
        Add(ArchiveManifest.JobFile, new MemoryStream(JobFile.Write(job)));
        Add(ArchiveManifest.TableFile, new MemoryStream(Encoding.UTF8.GetBytes(table.ToString())));
        foreach (var (name, path) in FilesOf(job, data).Where(file => File.Exists(file.Path)))
        {
            Add(name, File.OpenRead(path));
        }

        using var manifest = zip.CreateEntry(ArchiveManifest.File).Open();
        JsonSerializer.Serialize(manifest, new ArchiveManifest(ArchiveManifest.Name, ArchiveManifest.Newest, job.Number, now, files), WireJson.Options);

        void Add(string name, Stream from)
        {
            using (from)
            using (var entry = zip.CreateEntry(name, CompressionLevel.Optimal).Open())
            {
                files.Add(Copy(name, from, entry));
            }
        }
    }

    private static IEnumerable<(string Name, string Path)> FilesOf(Job job, DataFolder data)
    {
        foreach (var record in job.Points.SelectMany(point => point.Records))
        {
            foreach (var file in new[] { "journal.jsonl", "journal.jsonl.gz", "picture.svg", "picture.png" })
            {
                yield return ($"records/{record.Id}/{file}", Path.Combine(data.Record(record.Id), file));
            }
        }

        foreach (var photo in job.Book.Select(entry => entry.Deed).OfType<PhotoAdded>())
        {
            foreach (var ending in new[] { "", ".small.jpg" })
            {
                yield return ($"photos/{photo.Photo}{ending}", Path.Combine(data.Photos(job.Number), photo.Photo + ending));
            }
        }
    }

    /// <summary>Copies a file and takes its digest on the way.</summary>
    public static ArchivedFile Copy(string name, Stream from, Stream into, long most = long.MaxValue)
    {
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var buffer = new byte[81_920];
        long bytes = 0;
        for (var read = from.Read(buffer); read > 0 && bytes <= most; read = from.Read(buffer))
        {
            digest.AppendData(buffer, 0, read);
            into.Write(buffer, 0, read);
            bytes += read;
        }

        return new(name, bytes, Convert.ToHexStringLower(digest.GetHashAndReset()));
    }
}
