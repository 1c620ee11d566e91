using Handspun.Gauges.Journal;

namespace Handspun.Station;

/// <summary>The station's folder and where in it everything lies.</summary>
internal sealed class DataFolder : IDisposable
{
    private readonly FileStream? _lock;

    private DataFolder(string root, FileStream? held) => (Root, _lock) = (root, held);

    /// <summary>The folder of a user who named none.</summary>
    public static string Default => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "handspun");

    /// <summary>The folder itself.</summary>
    public string Root { get; }

    /// <summary>The store's file.</summary>
    public string Store => Path.Combine(Root, "handspun.db");

    /// <summary>The shop's gauges.</summary>
    public string Gauges => Path.Combine(Root, "gauges.toml");

    /// <summary>The shop's ways: its unit, its mechanics.</summary>
    public string Shop => Path.Combine(Root, "shop.toml");

    /// <summary>The shop's own profiles.</summary>
    public string Profiles => Path.Combine(Root, "profiles");

    /// <summary>The shop's own plans.</summary>
    public string Plans => Path.Combine(Root, "plans");

    /// <summary>What belongs to jobs beyond their records, a folder for each.</summary>
    public string Jobs => Path.Combine(Root, "jobs");

    /// <summary>The running journals, a folder for each gauge.</summary>
    public string Journals => Path.Combine(Root, "journal");

    /// <summary>The records, a folder for each.</summary>
    public string Records => Path.Combine(Root, "records");

    /// <summary>The logs.</summary>
    public string Logs => Path.Combine(Root, "logs");

    /// <summary>The screens that were paired.</summary>
    public string Screens => Path.Combine(Root, "screens.json");

    /// <summary>What the bay was doing, so that it goes on after a restart.</summary>
    public string Bay => Path.Combine(Root, "bay.json");

    /// <summary>A folder to look into, also one in which a station works; nothing is made or taken.</summary>
    public static DataFolder LookInto(string root) => new(Path.GetFullPath(root), null);

    /// <summary>Makes the folder where it is not there, and takes it for this station alone.</summary>
    /// <exception cref="StationTroubleException">It cannot be written, or another station works in it.</exception>
    public static DataFolder Take(string root)
    {
        root = Path.GetFullPath(root);
        try
        {
            Directory.CreateDirectory(root);
            foreach (var folder in new[] { "profiles", "plans", "journal", "records", "jobs", "logs" })
            {
                Directory.CreateDirectory(Path.Combine(root, folder));
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StationTroubleException($"The data folder {root} cannot be written: give another with --data, or mend its rights.");
        }

        try
        {
            return new(root, new FileStream(LockOf(root), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose));
        }
        catch (UnauthorizedAccessException)
        {
            throw new StationTroubleException($"The data folder {root} cannot be written: give another with --data, or mend its rights.");
        }
        catch (IOException)
        {
            throw new StationTroubleException($"Another station works in {root}: stop it first, or give another folder with --data.");
        }
    }

    /// <summary>Whether a station works in it now.</summary>
    public bool IsTaken
    {
        get
        {
            try
            {
                using var held = new FileStream(LockOf(Root), FileMode.Open, FileAccess.ReadWrite, FileShare.None);
                return false;
            }
            catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException)
            {
                return false;
            }
            catch (IOException)
            {
                return true;
            }
        }
    }

    /// <summary>The folder of one record.</summary>
    public string Record(string id) => Path.Combine(Records, id);

    /// <summary>The photos of one job.</summary>
    public string Photos(string job) => Path.Combine(Jobs, job, "photos");

    /// <summary>Where the journal of a record is written.</summary>
    public string PackedJournalOf(string record) => PlainJournalOf(record) + JournalFile.PackedEnding;

    /// <summary>The journal of a record: packed, or plain as earlier versions left it.</summary>
    public string JournalOf(string record) => File.Exists(PlainJournalOf(record)) && !File.Exists(PackedJournalOf(record)) ? PlainJournalOf(record) : PackedJournalOf(record);

    private static string LockOf(string root) => Path.Combine(root, "station.lock");

    private string PlainJournalOf(string record) => Path.Combine(Record(record), "journal.jsonl");

    /// <inheritdoc/>
    public void Dispose() => _lock?.Dispose();
}
