namespace Handspun.Gauges.Profiles;

/// <summary>The profiles at hand: the shop's own first, then the shipped ones. Each is a file <c>NAME.toml</c>.</summary>
/// <param name="folders">Where to look, the first that has the name wins; a folder that is not there is passed over.</param>
public sealed class ProfileShelf(params IReadOnlyList<string> folders)
{
    private const string Ending = ".toml";

    /// <summary>Where the shipped profiles lie, beside the program.</summary>
    public static string ShippedFolder { get; } = Path.Combine(AppContext.BaseDirectory, "profiles");

    /// <summary>The names of all profiles, in order.</summary>
    public IReadOnlyList<string> Names => [.. folders
        .Where(Directory.Exists)
        .SelectMany(folder => Directory.EnumerateFiles(folder, "*" + Ending))
        .Select(file => Path.GetFileNameWithoutExtension(file))
        .Distinct(StringComparer.Ordinal)
        .Order(StringComparer.Ordinal)];

    /// <summary>Reads the profile of that name.</summary>
    /// <exception cref="ProfileException">There is none, or it does not hold.</exception>
    public GaugeProfile Find(string name)
    {
        // Compared with what is there, never joined to a path: a name cannot reach outside the folders.
        if (!Names.Contains(name, StringComparer.Ordinal))
        {
            throw new ProfileException([$"There is no profile '{name}': use one of {string.Join(", ", Names)}, or put {name}{Ending} into the data folder's profiles."]);
        }

        var file = folders.Select(folder => Path.Combine(folder, name + Ending)).First(File.Exists);
        return ProfileReader.Read(name, File.ReadAllText(file));
    }
}
