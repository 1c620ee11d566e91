using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Handspun.Gauges.Journal;

/// <summary>The lines of a journal as text: JSON, one object a line, UTF-8.</summary>
/// <remarks>
/// Bytes are written as a string of the characters U+0000 to U+00FF, one for each byte (ISO 8859-1): a text gauge can be
/// read with the naked eye, and a binary one loses nothing.
/// </remarks>
internal static class JournalLines
{
    private static readonly JsonWriterOptions Relaxed = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static void WriteHeader(IBufferWriter<byte> into, JournalHeader header)
    {
        using (var json = new Utf8JsonWriter(into, Relaxed))
        {
            json.WriteStartObject();
            json.WriteString("journal", "handspun");
            json.WriteNumber("version", JournalHeader.CurrentVersion);
            json.WriteString("gauge", header.Gauge);
            json.WriteString("port", header.Port);
            json.WriteString("zero", header.Zero.UtcDateTime.ToString("O", CultureInfo.InvariantCulture));
            if (header.From is { } from)
            {
                WriteTime(json, "from", from);
            }

            WriteOptional(json, "capture", header.Capture);
            WriteOptional(json, "job", header.Job);
            WriteOptional(json, "point", header.Point);
            if (header.Task is { } task)
            {
                json.WritePropertyName("task");
                json.WriteRawValue(task);
            }

            json.WriteString("profile", header.Profile);
            json.WriteString("profile_toml", header.ProfileText);
            json.WriteEndObject();
        }

        into.Write("\n"u8);
    }

    public static void WriteChunk(IBufferWriter<byte> into, TimeSpan at, in ReadOnlySequence<byte> bytes)
    {
        using (var json = new Utf8JsonWriter(into, Relaxed))
        {
            json.WriteStartObject();
            WriteTime(json, "t", at);
            json.WriteString("raw", Encoding.Latin1.GetString(bytes));
            json.WriteEndObject();
        }

        into.Write("\n"u8);
    }

    public static void WriteEvent(IBufferWriter<byte> into, TimeSpan at, string name, string? detail)
    {
        using (var json = new Utf8JsonWriter(into, Relaxed))
        {
            json.WriteStartObject();
            WriteTime(json, "t", at);
            json.WriteString("event", name);
            WriteOptional(json, "detail", detail);
            json.WriteEndObject();
        }

        into.Write("\n"u8);
    }

    /// <summary>Reads a header line.</summary>
    /// <exception cref="FormatException">It is not one, or of a later version.</exception>
    public static JournalHeader ReadHeader(string line)
    {
        using var json = Parse(line);
        var root = json.RootElement;
        if (Optional(root, "journal") != "handspun" || !root.TryGetProperty("version", out var version))
        {
            throw new FormatException("this is not the first line of a journal");
        }

        if (version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out var number) || number > JournalHeader.CurrentVersion)
        {
            throw new FormatException($"the journal is of version {version}; this program reads up to {JournalHeader.CurrentVersion}");
        }

        return new JournalHeader
        {
            Gauge = Required(root, "gauge"),
            Port = Required(root, "port"),
            Profile = Required(root, "profile"),
            ProfileText = Required(root, "profile_toml"),
            Zero = DateTimeOffset.Parse(Required(root, "zero"), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal),
            From = root.TryGetProperty("from", out _) ? ReadTime(root, "from") : null,
            Capture = Optional(root, "capture"),
            Job = Optional(root, "job"),
            Point = Optional(root, "point"),
            Task = root.TryGetProperty("task", out var task) && task.ValueKind == JsonValueKind.Object ? task.GetRawText() : null,
        };
    }

    /// <summary>Reads a line after the first.</summary>
    /// <exception cref="FormatException">It is not one.</exception>
    public static JournalEntry ReadEntry(string line)
    {
        using var json = Parse(line);
        var root = json.RootElement;
        var at = ReadTime(root, "t");
        if (Optional(root, "raw") is { } raw)
        {
            return raw.All(c => c <= 0xFF)
                ? new JournalEntry.Chunk(at, Encoding.Latin1.GetBytes(raw))
                : throw new FormatException("'raw' holds a character that is no byte");
        }

        return new JournalEntry.Event(at, Required(root, "event"), Optional(root, "detail"));
    }

    private static void WriteTime(Utf8JsonWriter json, string key, TimeSpan at)
    {
        Span<byte> number = stackalloc byte[32];
        at.TotalSeconds.TryFormat(number, out var length, "0.000000", CultureInfo.InvariantCulture);
        json.WritePropertyName(key);
        json.WriteRawValue(number[..length], skipInputValidation: true);
    }

    private static void WriteOptional(Utf8JsonWriter json, string key, string? value)
    {
        if (value is not null)
        {
            json.WriteString(key, value);
        }
    }

    private static JsonDocument Parse(string line)
    {
        try
        {
            var json = JsonDocument.Parse(line);
            return json.RootElement.ValueKind == JsonValueKind.Object ? json : throw new FormatException("the line is not a JSON object");
        }
        catch (JsonException e)
        {
            throw new FormatException("the line is not JSON", e);
        }
    }

    private static TimeSpan ReadTime(JsonElement root, string key) =>
        root.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var seconds) && Math.Abs(seconds) < 1e9
            ? TimeSpan.FromMicroseconds(Math.Round(seconds * 1e6))
            : throw new FormatException($"'{key}' is missing or is no time in seconds");

    private static string Required(JsonElement root, string key) =>
        Optional(root, key) ?? throw new FormatException($"'{key}' is missing");

    private static string? Optional(JsonElement root, string key) =>
        root.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.String ? TextOf(value, key) : null;

    private static string? TextOf(JsonElement value, string key)
    {
        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException e)
        {
            throw new FormatException($"'{key}' holds half of a surrogate pair", e);
        }
    }
}
