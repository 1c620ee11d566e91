using Handspun.Jobs.Lengths;
using Tomlyn;
using Tomlyn.Model;

namespace Handspun.Station;

/// <summary>The shop's ways, from <c>shop.toml</c>.</summary>
/// <param name="Unit">The unit of lengths on screens.</param>
/// <param name="StepAfter">How long after a result the bay goes on to the plan's next point; zero where it never does.</param>
/// <param name="Screens">The address at which screens of the shop's network reach the pages, as it is written; null where only this machine does.</param>
internal sealed record ShopFile(LengthUnit Unit, TimeSpan StepAfter, string? Screens = null)
{
    private const long LongestStepSeconds = 600;

    /// <summary>The time that is taken where the shop says none; our own choice.</summary>
    public static readonly TimeSpan UsualStepAfter = TimeSpan.FromSeconds(8);

    /// <summary>Reads the file; inches where there is none.</summary>
    /// <exception cref="StationTroubleException">The file does not hold.</exception>
    public static ShopFile Read(string path)
    {
        if (!File.Exists(path))
        {
            return new(LengthUnit.Inch, UsualStepAfter);
        }

        try
        {
            var file = TomlSerializer.Deserialize<TomlTable>(File.ReadAllText(path)) ?? [];
            var unit = file.TryGetValue("unit", out var value) ? value : "in";
            return file.Keys.Any(key => key is not ("unit" or "step_after_s" or "screens"))
                ? throw Wrong(path)
                : new(unit switch
                {
                    "in" => LengthUnit.Inch,
                    "mm" => LengthUnit.Millimetre,
                    _ => throw Wrong(path),
                }, (file.TryGetValue("step_after_s", out var after) ? after : null) switch
                {
                    null => UsualStepAfter,
                    long seconds and >= 0 and <= LongestStepSeconds => TimeSpan.FromSeconds(seconds),
                    _ => throw Wrong(path),
                }, (file.TryGetValue("screens", out var screens) ? screens : null) switch
                {
                    null => null,
                    string address => address,
                    _ => throw Wrong(path),
                });
        }
        catch (TomlException)
        {
            throw Wrong(path);
        }
    }

    private static StationTroubleException Wrong(string path) =>
        new($"{path} does not hold: it has up to three lines: unit = \"in\" or unit = \"mm\", step_after_s = a whole number of seconds up to {LongestStepSeconds} (0: the bay waits for you), and screens = \"http://ADDRESS:PORT\" with this machine's address in the shop's network.", StationTroubleException.Usage);
}
