using System.Text.RegularExpressions;

namespace Handspun.Archives;

/// <summary>What is in an archive of a job: each file with its size and digest.</summary>
internal sealed partial record ArchiveManifest(string Format, int Version, string Job, DateTimeOffset MadeAt, IReadOnlyList<ArchivedFile> Files)
{
    public const string Name = "handspun-archive";
    public const int Newest = 1;

    /// <summary>The file that holds it, the last in the archive.</summary>
    public const string File = "manifest.json";

    /// <summary>The file with the job.</summary>
    public const string JobFile = "job.json";

    /// <summary>The file with the records as a table.</summary>
    public const string TableFile = "records.csv";

    /// <summary>Whether a file of that name belongs into an archive: it can lead nowhere but into the folders of its job.</summary>
    public static bool MayHold(string path) => Allowed().IsMatch(path);

    [GeneratedRegex(@"^(job\.json|records\.csv|records/[0-9A-Za-z-]{1,64}/(journal\.jsonl(\.gz)?|picture\.(svg|png))|photos/[0-9a-f]{32}\.(jpg|png)(\.small\.jpg)?)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Allowed();
}

/// <summary>A file of an archive.</summary>
/// <param name="Path">Its name in the archive.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Sha256">The digest of its bytes, in lower-case hexadecimal.</param>
internal sealed record ArchivedFile(string Path, long Bytes, string Sha256);
