using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Tomlyn;
using Tomlyn.Model;

namespace Handspun.Station;

/// <summary>A gauge as the shop names it on the command line (<c>NAME=PROFILE@PORT</c>) or in <c>gauges.toml</c>.</summary>
internal sealed record GaugeOption(string Name, string Profile, string Port)
{
    /// <summary>How a port is written.</summary>
    public const string Ports = "Give a serial device, such as /dev/ttyUSB0 or COM3, usb:VVVV:PPPP[:SERIAL], hid:VVVV:PPPP[:SERIAL], tcp://host:port or replay:FILE.";

    private const string Form = "NAME=PROFILE@PORT, such as pinion=text-line@/dev/ttyUSB0";

    /// <summary>Reads the command line's form.</summary>
    /// <exception cref="StationTroubleException">It is not of that form.</exception>
    public static GaugeOption Parse(string text)
    {
        var equals = text.IndexOf('=');
        var at = text.IndexOf('@', equals + 1);
        return equals > 0 && at > equals + 1 && at < text.Length - 1
            ? new(text[..equals], text[(equals + 1)..at], text[(at + 1)..])
            : throw new StationTroubleException($"--gauge {text} is not {Form}.", StationTroubleException.Usage);
    }

    /// <summary>Reads the shop's file; none where there is no file.</summary>
    /// <exception cref="StationTroubleException">The file does not hold.</exception>
    public static IReadOnlyList<GaugeOption> ReadFile(string path)
    {
        if (!File.Exists(path))
        {
            return [];
        }

        try
        {
            var file = TomlSerializer.Deserialize<TomlTable>(File.ReadAllText(path)) ?? [];
            var gauges = file.TryGetValue("gauge", out var list) ? list as TomlTableArray : [];
            return file.Keys.Any(key => key != "gauge") || gauges is null
                ? throw Wrong(path, "it holds tables [[gauge]] and nothing else")
                : [.. gauges.Select(gauge => Read(path, gauge))];
        }
        catch (TomlException e)
        {
            throw Wrong(path, $"it is not TOML: {e.Message}");
        }
    }

    /// <summary>Finds the profiles and the ports of all gauges; tells all that is wrong at once.</summary>
    /// <exception cref="StationTroubleException">Something is wrong.</exception>
    public static IReadOnlyList<GaugeSetup> Resolve(IReadOnlyList<GaugeOption> options, ProfileShelf profiles)
    {
        var problems = new List<string>();
        problems.AddRange(options.GroupBy(option => option.Name, StringComparer.Ordinal).Where(same => same.Count() > 1)
            .Select(same => $"Two gauges are called '{same.Key}': give each a name of its own."));
        var setups = options.Select(option => Resolve(option, profiles, problems)).ToList();
        return problems.Count == 0
            ? [.. setups.OfType<GaugeSetup>()]
            : throw new StationTroubleException(string.Join(Environment.NewLine, problems), StationTroubleException.Usage);
    }

    private static GaugeSetup? Resolve(GaugeOption option, ProfileShelf profiles, List<string> problems)
    {
        if (!GaugeName.TryParse(option.Name, out var name))
        {
            problems.Add($"'{option.Name}' is no name for a gauge: use up to 32 lower-case letters, digits and hyphens, a letter first.");
            return null;
        }

        if (!GaugePort.TryParse(option.Port, out var port))
        {
            problems.Add($"Gauge '{name}': '{option.Port}' is no port. {Ports}");
            return null;
        }

        try
        {
            return new(name, profiles.Find(option.Profile), port!);
        }
        catch (ProfileException e)
        {
            problems.AddRange(e.Problems.Select(problem => $"Gauge '{name}': {problem}"));
            return null;
        }
    }

    private static GaugeOption Read(string path, TomlTable gauge)
    {
        string Text(string key) => gauge.TryGetValue(key, out var value) && value is string { Length: > 0 } text
            ? text
            : throw Wrong(path, $"each [[gauge]] has {key} = \"…\"");

        return gauge.Keys.FirstOrDefault(key => key is not ("name" or "profile" or "port")) is { } unknown
            ? throw Wrong(path, $"a [[gauge]] has no key '{unknown}'; it has name, profile and port")
            : new(Text("name"), Text("profile"), Text("port"));
    }

    private static StationTroubleException Wrong(string path, string rule) =>
        new($"{path} does not hold: {rule}.", StationTroubleException.Usage);
}
