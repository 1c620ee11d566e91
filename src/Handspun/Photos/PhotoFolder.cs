using System.Security.Cryptography;
using Handspun.Jobs.Book;
using Handspun.Pictures.Photos;
using Handspun.Station;

namespace Handspun.Photos;

/// <summary>The photos of jobs, in a folder for each job: each as it came, and a small one for pages.</summary>
internal sealed class PhotoFolder(StationOptions options)
{
    private const string SmallEnding = ".small.jpg";

    /// <summary>Looks into a photo and keeps it.</summary>
    /// <param name="job">The job's number; it must be that of a job.</param>
    /// <param name="name">What the file was called, to name it in a sentence.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="caption">What it shows.</param>
    /// <exception cref="PhotoRefusalException">It is no picture, or too large.</exception>
    public PhotoAdded Keep(string job, string name, byte[] bytes, string? caption)
    {
        var answer = PhotoReader.Read(bytes);
        if (answer.Photo is not { } photo)
        {
            throw new PhotoRefusalException($"'{Path.GetFileName(name)}' was not kept: {answer.Problem}");
        }

        var kept = Guid.CreateVersion7().ToString("N") + (photo.Format == PhotoFormat.Png ? ".png" : ".jpg");
        Directory.CreateDirectory(options.Data.Photos(job));
        File.WriteAllBytes(PathOf(job, kept), bytes);
        File.WriteAllBytes(PathOf(job, kept) + SmallEnding, photo.Small);
        return new(kept, photo.Width, photo.Height, bytes.LongLength, Convert.ToHexStringLower(SHA256.HashData(bytes)), caption);
    }

    /// <summary>Lets go a photo that did not get into the book.</summary>
    public void Drop(string job, PhotoAdded photo)
    {
        File.Delete(PathOf(job, photo.Photo));
        File.Delete(PathOf(job, photo.Photo) + SmallEnding);
    }

    /// <summary>The file of a photo that the book names, as it came or small.</summary>
    public string PathOf(string job, PhotoAdded photo, bool small) => PathOf(job, photo.Photo) + (small ? SmallEnding : "");

    private string PathOf(string job, string photo) => Path.Combine(options.Data.Photos(job), photo);
}

/// <summary>A photo that cannot be kept.</summary>
/// <param name="sentence">Why, and what to do.</param>
internal sealed class PhotoRefusalException(string sentence) : Exception(sentence);
