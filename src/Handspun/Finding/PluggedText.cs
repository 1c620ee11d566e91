using Handspun.Gauges.Finding;
using Handspun.Gauges.Links;
using Handspun.Station;
using Handspun.Terminal;

namespace Handspun.Finding;

/// <summary>What is plugged in, for a person at a terminal and for programs.</summary>
internal static class PluggedText
{
    private const int Width = 100;

    /// <summary>The list.</summary>
    /// <param name="ports">What is plugged in.</param>
    /// <param name="gauges">The shop's gauges.</param>
    /// <param name="paint">The colours.</param>
    public static IEnumerable<string> Of(IReadOnlyList<PluggedPort> ports, IReadOnlyList<GaugeOption> gauges, Paint paint)
    {
        if (ports.Count == 0)
        {
            yield return "Nothing is plugged in that may be a gauge: plug its cable in and ask again.";
            yield return paint.Faint("A gauge behind a network adapter is not seen from here; its port is tcp://HOST:PORT.");
            yield break;
        }

        foreach (var (title, kind) in new[] { ("Serial ports", false), ("HID devices", true) })
        {
            foreach (var line in Part(title, [.. ports.Where(port => port.IsHid == kind)], gauges, paint))
            {
                yield return line;
            }
        }

        if (ports.FirstOrDefault(port => port is { MayOpen: true, Holders.Count: 0 } && GaugeAt(port, gauges) is null) is { } free)
        {
            yield return $"Next: {paint.Strong($"handspun gauges --try {free.Port}")} listens there and proposes profiles.";
        }
    }

    /// <summary>The same for programs.</summary>
    public static PluggedMessage MessageOf(PluggedPort port, IReadOnlyList<GaugeOption> gauges) => new(
        port.Device,
        port.Port.ToString()!,
        port.IsHid ? "hid" : "serial",
        port.Title,
        port.MayOpen,
        [.. port.Holders.Select(holder => new HolderMessage(holder.Process, holder.Name))],
        GaugeAt(port, gauges)?.Name,
        port.Trouble);

    private static IEnumerable<string> Part(string title, IReadOnlyList<PluggedPort> ports, IReadOnlyList<GaugeOption> gauges, Paint paint)
    {
        if (ports.Count == 0)
        {
            yield break;
        }

        yield return paint.Strong(title);
        var rows = Columns.Of([.. ports.Select(port => (IReadOnlyList<string>)[port.Device, port.Port.ToString() == port.Device ? "" : port.Port.ToString()!, port.Title, ""])]);
        foreach (var (port, row) in ports.Zip(rows))
        {
            yield return $"  {Sign(port, paint)} {row}";
            foreach (var line in Notes(port, gauges).SelectMany(note => Columns.Wrap(note, Width, "      ")))
            {
                yield return paint.Faint(line.StartsWith(' ') ? line : "      " + line);
            }
        }

        yield return "";
    }

    private static string Sign(PluggedPort port, Paint paint) =>
        !port.MayOpen || port.Trouble is not null ? paint.Bad("✗")
        : port.Holders.Count > 0 ? paint.Mind("●")
        : paint.Good("✓");

    private static IEnumerable<string> Notes(PluggedPort port, IReadOnlyList<GaugeOption> gauges)
    {
        if (GaugeAt(port, gauges) is { } gauge)
        {
            yield return $"gauge '{gauge.Name}', profile {gauge.Profile}";
        }

        if (port.Holders.Count > 0)
        {
            yield return "held by " + string.Join(", ", port.Holders);
        }

        if (port.Trouble is { } trouble)
        {
            yield return trouble;
        }
    }

    private static GaugeOption? GaugeAt(PluggedPort port, IReadOnlyList<GaugeOption> gauges) =>
        gauges.FirstOrDefault(gauge => GaugePort.TryParse(gauge.Port, out var named) && Means(named!, port));

    private static bool Means(GaugePort named, PluggedPort port) => (named, port.Port) switch
    {
        (GaugePort.Usb wanted, GaugePort.Usb there) => wanted.Identity.Fits(there.Identity),
        (GaugePort.Hid wanted, GaugePort.Hid there) => wanted.Identity.Fits(there.Identity),
        (GaugePort.Serial wanted, _) => wanted.FinalDevice() == port.Device,
        (GaugePort.HidNode wanted, _) => wanted.Node == port.Device,
        _ => false,
    };
}

/// <summary>Something that is plugged in, one JSON object a line.</summary>
internal sealed record PluggedMessage(string Device, string Port, string Kind, string Title, bool MayOpen, IReadOnlyList<HolderMessage> Holders, string? Gauge, string? Sentence);

/// <summary>A program that holds it.</summary>
internal sealed record HolderMessage(int Process, string Name);
