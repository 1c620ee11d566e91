using System.Text.Encodings.Web;
using System.Text.Json;

namespace Handspun.Jobs.Records;

/// <summary>How figures and setups are written as JSON, in the store and on the wire: flat keys in snake case with short units, such as <c>tir_u95_mm</c>.</summary>
public static class FiguresJson
{
    /// <summary>The options.</summary>
    public static JsonSerializerOptions Options { get; } = Create();

    /// <summary>Options of the same shape that can be changed before they are first used.</summary>
    public static JsonSerializerOptions Create() => new()
    {
        PropertyNamingPolicy = ShortUnits.Policy,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        IgnoreReadOnlyProperties = true,
        AllowOutOfOrderMetadataProperties = true,
    };

    /// <summary>Names in snake case whose units are abbreviated: <c>TirMillimetres</c> becomes <c>tir_mm</c>.</summary>
    private sealed class ShortUnits : JsonNamingPolicy
    {
        public static ShortUnits Policy { get; } = new();

        public override string ConvertName(string name) => string.Join('_', SnakeCaseLower.ConvertName(name).Split('_').Select(word => word switch
        {
            "millimetres" => "mm",
            "degrees" => "deg",
            "second" or "seconds" => "s",
            _ => word,
        }));
    }
}
