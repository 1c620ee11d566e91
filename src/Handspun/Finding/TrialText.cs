using System.Globalization;
using System.Text;
using Handspun.Gauges.Links;
using Handspun.Gauges.Trying;
using Handspun.Jobs.Lengths;
using Handspun.Terminal;

namespace Handspun.Finding;

/// <summary>What was heard at a port, and which profiles suit it.</summary>
internal static class TrialText
{
    private const int MostProposals = 5;

    /// <summary>One way in which it was listened.</summary>
    public static string Way(HeardStretch heard, GaugePort port, Paint paint) => string.Create(
        CultureInfo.InvariantCulture,
        $"  {(heard.Bytes > 0 ? paint.Good("✓") : paint.Faint("·"))} {Line(heard, port)}: {heard.Bytes} bytes in {heard.Lasted.TotalSeconds:0.0} s{(heard.Bytes > 0 ? $", {paint.Faint(Shown(heard.Sample.Span))}" : "")}");

    /// <summary>How the line was set, and whether the gauge was asked.</summary>
    public static string Line(HeardStretch heard, GaugePort port)
    {
        var (link, request) = (heard.Profiles[0].Link, heard.Profiles[0].Request);
        var line = port is GaugePort.Serial or GaugePort.Usb
            ? string.Create(CultureInfo.InvariantCulture, $"{link.Baud} baud {link.DataBits}{link.Parity.ToString()[0]}{StopBits(link)}{Level("DTR", link.DataTerminalReady)}{Level("RTS", link.RequestToSend)}")
            : "listening";
        return request.OnDemand ? $"{line}, asked with {Shown(request.Send.Span)}" : line;
    }

    /// <summary>The proposals, best first, and what to write down.</summary>
    public static IEnumerable<string> Proposals(IReadOnlyList<ProfileTrial> trials, bool heard, GaugePort port, LengthUnit unit, Paint paint)
    {
        if (trials.Count == 0)
        {
            yield return heard
                ? "None of the profiles makes readings of that: write one of your own into the data folder's profiles; --record FILE keeps the bytes for it."
                : "Nothing was heard: switch the gauge on, set it to send, and move its plunger while this listens; check the cable. --seconds N listens longer.";
            yield break;
        }

        yield return paint.Strong("Profiles that make readings of it, best first");
        var rows = Columns.Of([.. trials.Take(MostProposals).Select(trial => (IReadOnlyList<string>)[trial.Profile.Name, Counts(trial), Range(trial, unit)])]);
        foreach (var (trial, row) in trials.Zip(rows))
        {
            yield return $"  {(trial.Suits ? paint.Good("✓") : paint.Mind("?"))} {row}";
        }

        if (trials[0] is { Suits: true } best)
        {
            yield return "";
            yield return "To keep it, write into gauges.toml in the data folder:";
            yield return $"""
                  [[gauge]]
                  name = "dial"
                  profile = "{best.Profile.Name}"
                  port = "{port.ToString()!.Replace("\\", "\\\\", StringComparison.Ordinal)}"
                """;
        }
    }

    /// <summary>Bytes as a person can read them: letters as they are, the rest in hexadecimal digits.</summary>
    public static string Shown(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder("\"");
        foreach (var value in bytes)
        {
            _ = value switch
            {
                (byte)'\r' => text.Append("\\r"),
                (byte)'\n' => text.Append("\\n"),
                (byte)'"' or (byte)'\\' => text.Append('\\').Append((char)value),
                >= 0x20 and < 0x7F => text.Append((char)value),
                _ => text.Append(CultureInfo.InvariantCulture, $"\\x{value:X2}"),
            };
        }

        return text.Append('"').ToString();
    }

    private static string Counts(ProfileTrial trial) => string.Create(
        CultureInfo.InvariantCulture,
        $"{trial.Readings} readings, {trial.PerSecond:0.0} a second, {100 * trial.Share:0} % of the frames{(trial.Unlikely > 0 ? $", {trial.Unlikely} leaps" : "")}");

    private static string Range(ProfileTrial trial, LengthUnit unit) =>
        $"{LengthText.Number(Length(trial.Low), unit)} to {LengthText.Of(Length(trial.High), unit)}{(trial.NamesUnit ? "" : " by the profile's unit")}";

    private static Metrology.Quantities.Length Length(double? millimetres) => Metrology.Quantities.Length.FromMillimetres(millimetres ?? 0);

    private static string Level(string line, bool? on) => on is { } known ? $", {line} {(known ? "on" : "off")}" : "";

    private static string StopBits(LinkSettings link) => link.StopBits switch
    {
        System.IO.Ports.StopBits.Two => "2",
        System.IO.Ports.StopBits.OnePointFive => "1.5",
        _ => "1",
    };
}

/// <summary>What a trial found, as one JSON object.</summary>
internal sealed record TrialMessage(string Port, IReadOnlyList<HeardMessage> Heard, IReadOnlyList<ProposalMessage> Proposals);

/// <summary>One way in which it was listened.</summary>
internal sealed record HeardMessage(string Line, double Seconds, int Bytes, string Sample)
{
    public static HeardMessage Of(HeardStretch heard, GaugePort port) =>
        new(TrialText.Line(heard, port), Math.Round(heard.Lasted.TotalSeconds, 3), heard.Bytes, Encoding.Latin1.GetString(heard.Sample.Span));
}

/// <summary>A profile that makes readings of it.</summary>
internal sealed record ProposalMessage(string Profile, bool Suits, double Share, int Readings, long Unreadable, int Unlikely, double ReadingsPerS, double? LowMm, double? HighMm, bool NamesUnit)
{
    public static ProposalMessage Of(ProfileTrial trial) => new(
        trial.Profile.Name, trial.Suits, Math.Round(trial.Share, 4), trial.Readings, trial.Unreadable, trial.Unlikely, Math.Round(trial.PerSecond, 2), trial.Low, trial.High, trial.NamesUnit);
}
