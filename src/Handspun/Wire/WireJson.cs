using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Handspun.Wire;

/// <summary>How everything that leaves the station as JSON is written: snake case, nulls kept.</summary>
internal static class WireJson
{
    /// <summary>The options for all of it.</summary>
    public static JsonSerializerOptions Options { get; } = Configure(new JsonSerializerOptions(JsonSerializerDefaults.Web));

    /// <summary>Sets options the same way.</summary>
    public static JsonSerializerOptions Configure(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower;
        options.DictionaryKeyPolicy = JsonNamingPolicy.SnakeCaseLower;
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;   // a misspelt key is an answer, not a silence
        return options;
    }
}
