using System.Text.Json;

namespace Handspun.Metrology.Tests.Roundness;

/// <summary>The point sets of circle-sets.json, which names the source of each.</summary>
internal static class CircleSets
{
    private static readonly JsonElement Sets = Load();

    public static IEnumerable<string> Names => Sets.EnumerateObject().Select(set => set.Name);

    public static JsonElement Of(string name) => Sets.GetProperty(name);

    public static (double[] X, double[] Y) Points(string name)
    {
        var points = Of(name).GetProperty("points").EnumerateArray().ToArray();
        return ([.. points.Select(point => point[0].GetDouble())], [.. points.Select(point => point[1].GetDouble())]);
    }

    private static JsonElement Load()
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Roundness", "circle-sets.json")));
        return document.RootElement.GetProperty("sets").Clone();
    }
}
