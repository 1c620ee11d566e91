using Handspun.Http;
using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;
using Handspun.Pictures.Photos;

namespace Handspun.Photos;

/// <summary>Takes photos into a job: the picture into its folder, the line into its book.</summary>
internal sealed class PhotoDesk(JobStore store, JobBook book, PhotoFolder folder)
{
    /// <summary>All photos that are sent at once have at most this many bytes.</summary>
    public const long MostBytesAtOnce = 3L * PhotoReader.MostBytes;

    /// <summary>How large a request that brings photos may be.</summary>
    public static RequestSize Size { get; } = new(
        MostBytesAtOnce,
        $"That is too large: one photo may have {PhotoReader.MostBytes / 1024 / 1024} MB, and all that are sent at once {MostBytesAtOnce / 1024 / 1024} MB. Go back: what you typed is still there.");

    /// <summary>Takes photos. Those that are none are told, the others are kept.</summary>
    /// <param name="job">The job's number.</param>
    /// <param name="about">What they belong to, as <see cref="Subject"/> writes it.</param>
    /// <param name="by">Who sends them.</param>
    /// <param name="caption">What they show.</param>
    /// <param name="files">The files; empty ones, as a form sends them where nobody chose any, are passed over.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <exception cref="JobNotFoundException">There is no such job, or nothing in it that they could belong to.</exception>
    /// <exception cref="BookRefusalException">There is no name.</exception>
    /// <returns>The job as it is now, and one sentence for each photo that was not kept.</returns>
    public async Task<(Job Job, IReadOnlyList<string> Refused)> TakeAsync(
        string job, string about, string? by, string? caption, IEnumerable<IFormFile> files, CancellationToken cancellation)
    {
        var found = await store.GetAsync(job, cancellation);
        var refused = new List<string>();
        foreach (var file in files.Where(file => file.Length > 0))
        {
            try
            {
                found = await TakeAsync(found.Number, about, by, caption, file, cancellation);
            }
            catch (PhotoRefusalException e)
            {
                refused.Add(e.Message);
            }
        }

        return (found, refused);
    }

    private async Task<Job> TakeAsync(string job, string about, string? by, string? caption, IFormFile file, CancellationToken cancellation)
    {
        if (file.Length > PhotoReader.MostBytes)
        {
            throw new PhotoRefusalException($"'{Path.GetFileName(file.FileName)}' was not kept: it has {file.Length / 1024 / 1024} MB, and {PhotoReader.MostBytes / 1024 / 1024} MB are the most: take it with fewer pixels.");
        }

        var bytes = new byte[file.Length];
        await using (var from = file.OpenReadStream())
        {
            await from.ReadExactlyAsync(bytes, cancellation);
        }

        var photo = folder.Keep(job, file.FileName, bytes, caption);
        try
        {
            return await book.WriteAsync(job, about, new Signature(by), found => FindingActs.Photo(found, about, photo), cancellation);
        }
        catch
        {
            folder.Drop(job, photo);
            throw;
        }
    }
}
