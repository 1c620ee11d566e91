using System.Text.Json;
using System.Text.Json.Serialization;
using Handspun.Jobs.Records;

namespace Handspun.Wire;

/// <summary>What only one kind of measurement tells, as keys that stand beside the common ones of a message.</summary>
internal static class FlatFigures
{
    private static readonly JsonSerializerOptions Options = Rounded();

    /// <summary>The keys of a kind's own figures, such as <c>tir_mm</c>; what is not known is null.</summary>
    public static Dictionary<string, JsonElement> Of(object figures) =>
        JsonSerializer.SerializeToElement(figures, figures.GetType(), Options).EnumerateObject().ToDictionary(key => key.Name, key => key.Value);

    private static JsonSerializerOptions Rounded()
    {
        var options = FiguresJson.Create();
        options.Converters.Add(new SixDecimals());
        return options;
    }

    private sealed class SixDecimals : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(Math.Round(value, 6));
    }
}
