using Handspun.Jobs.Lengths;
using Tomlyn;
using Tomlyn.Model;

namespace Handspun.Station;

/// <summary>The shop's ways, from <c>shop.toml</c>.</summary>
/// <param name="Unit">The unit of lengths on screens.</param>
internal sealed record ShopFile(LengthUnit Unit)
{
    /// <summary>Reads the file; inches where there is none.</summary>
    /// <exception cref="StationTroubleException">The file does not hold.</exception>
    public static ShopFile Read(string path)
    {
        if (!File.Exists(path))
        {
            return new(LengthUnit.Inch);
        }

        try
        {
            var file = TomlSerializer.Deserialize<TomlTable>(File.ReadAllText(path)) ?? [];
            var unit = file.TryGetValue("unit", out var value) ? value : "in";
            return file.Keys.Any(key => key != "unit")
                ? throw Wrong(path)
                : new(unit switch
                {
                    "in" => LengthUnit.Inch,
                    "mm" => LengthUnit.Millimetre,
                    _ => throw Wrong(path),
                });
        }
        catch (TomlException)
        {
            throw Wrong(path);
        }
    }

    private static StationTroubleException Wrong(string path) =>
        new($"{path} does not hold: it has one line, unit = \"in\" or unit = \"mm\".", StationTroubleException.Usage);
}
