using System.Text.Json;

namespace Handspun.EndToEnd.Parts;

/// <summary>Somebody else's MQTT client (Debian's mosquitto-clients), subscribed to the station's topics.</summary>
internal sealed class Listener(RunningProgram program) : IAsyncDisposable
{
    /// <summary>Subscribes, and waits until the subscription stands.</summary>
    /// <param name="port">The broker's port.</param>
    /// <param name="version"><c>mqttv311</c> or <c>mqttv5</c>.</param>
    public static async Task<Listener> SubscribeAsync(string port, string version = "mqttv5")
    {
        // A client of MQTT 5 may leave its name to the broker.
        string[] name = version == "mqttv5" ? [] : ["-i", $"listener-{Guid.NewGuid():N}"];
        var program = RunningProgram.Start("stdbuf", ["-oL", "mosquitto_sub", "-h", "127.0.0.1", "-p", port, "-V", version, .. name, "-t", "handspun/v1/#", "-F", "%r %t %p", "-d"]);
        await program.LineAsync("Subscribed");
        return new Listener(program);
    }

    /// <summary>The messages so far whose topic matches: whether retained, the topic, the payload.</summary>
    public IReadOnlyList<(bool Retained, string Topic, JsonElement Payload)> Messages(string topic) =>
        [.. program.Output
            .Select(line => line.Split(' ', 3))
            .Where(parts => parts.Length == 3 && parts[0] is "0" or "1" && parts[1].StartsWith("handspun/v1/", StringComparison.Ordinal) && parts[1].Contains(topic, StringComparison.Ordinal))
            .Select(parts => (parts[0] == "1", parts[1], JsonDocument.Parse(parts[2]).RootElement))];

    public ValueTask DisposeAsync() => program.DisposeAsync();
}
