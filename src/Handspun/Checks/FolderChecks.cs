using System.Globalization;
using Handspun.Station;

namespace Handspun.Checks;

/// <summary>The data folder: whether it can be written, and how much room there is.</summary>
internal static class FolderChecks
{
    private const string Folder = "Data folder";
    private const string Room = "Disk space";
    private const double BytesInGigabyte = 1e9;

    // Chosen with room to spare; no measurement stands behind them.
    private const double FewestGigabytes = 0.2;
    private const double ComfortableGigabytes = 1;

    /// <summary>Whether the folder is there and can be written.</summary>
    public static CheckLine Rights(DataFolder data)
    {
        if (!Directory.Exists(data.Root))
        {
            return CheckLine.Mind(Folder, $"{data.Root} is not there yet: the first start of the station makes it.");
        }

        try
        {
            var probe = Path.Combine(data.Root, $"check-{Guid.NewGuid():N}");
            using (new FileStream(probe, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose))
            {
                return CheckLine.Good(Folder, $"{data.Root} can be written.");
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return CheckLine.Failing(Folder, $"{data.Root} cannot be written by user '{Environment.UserName}' ({e.Message}): mend its rights, or give another folder with --data.");
        }
    }

    /// <summary>How much room is on its disk.</summary>
    public static CheckLine Space(DataFolder data)
    {
        var there = data.Root;
        while (!Directory.Exists(there) && Path.GetDirectoryName(there) is { } parent)
        {
            there = parent;
        }

        return Space(there, new DriveInfo(there).AvailableFreeSpace / BytesInGigabyte);
    }

    /// <summary>What is said of so much room.</summary>
    public static CheckLine Space(string folder, double gigabytes)
    {
        var free = string.Create(CultureInfo.InvariantCulture, $"{gigabytes:0.0} GB are free at {folder}");
        return gigabytes switch
        {
            < FewestGigabytes => CheckLine.Failing(Room, $"{free}: readings that cannot be written are not shown; make room before the next job."),
            < ComfortableGigabytes => CheckLine.Mind(Room, $"{free}: enough for today; make room soon."),
            _ => CheckLine.Good(Room, $"{free}."),
        };
    }
}
