using Handspun.Gauges.Finding;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Station;

namespace Handspun.Checks;

/// <summary>The shop's gauges: whether each is named well, plugged in, permitted and free. No port is opened.</summary>
internal sealed class GaugeChecks(DeviceRoots roots)
{
    private const string Listed = "Gauges";

    /// <summary>A line for each gauge; one where there is none or where the list does not hold.</summary>
    /// <param name="data">The data folder.</param>
    /// <param name="shelf">The profiles.</param>
    public IEnumerable<CheckLine> All(DataFolder data, ProfileShelf shelf)
    {
        IReadOnlyList<GaugeSetup> gauges;
        try
        {
            gauges = GaugeOption.Resolve(GaugeOption.ReadFile(data.Gauges), shelf);
        }
        catch (StationTroubleException e)
        {
            return e.Message.Split(Environment.NewLine).Select(problem => CheckLine.Failing(Listed, problem));
        }

        var plugged = new PluggedPorts(roots).All();
        return gauges.Count == 0
            ? [CheckLine.Mind(Listed, $"None is named in {data.Gauges}: 'handspun gauges' lists what is plugged in, and its --try finds the profile.")]
            : gauges.Select(gauge => Check(gauge, plugged, data.IsTaken));
    }

    private CheckLine Check(GaugeSetup gauge, IReadOnlyList<PluggedPort> plugged, bool stationRuns)
    {
        var subject = $"Gauge '{gauge.Name}'";
        try
        {
            if (DeviceOf(gauge) is not { } device)
            {
                return gauge.Port is GaugePort.Replay { File: var file } && !File.Exists(file)
                    ? CheckLine.Failing(subject, $"There is no journal {file}: give the file of a record.")
                    : CheckLine.Good(subject, $"is at {gauge.Port}, which is only looked at when it is opened.");
            }

            return Check(subject, gauge, device, plugged.FirstOrDefault(port => port.Device == device), stationRuns);
        }
        catch (LinkUnavailableException e)
        {
            return CheckLine.Failing(subject, e.Message);
        }
    }

    private static CheckLine Check(string subject, GaugeSetup gauge, string device, PluggedPort? port, bool stationRuns)
    {
        if (port is null)
        {
            return File.Exists(device)
                ? CheckLine.Good(subject, $"{device} is there (profile {gauge.Profile.Name}).")
                : CheckLine.Failing(subject, $"There is no {device}: plug the gauge in, or give the port that it is on.");
        }

        if (port.Trouble is { } trouble)
        {
            return CheckLine.Failing(subject, trouble);
        }

        return port.Holders is [var holder, ..] && !stationRuns
            ? CheckLine.Failing(subject, $"{device} is held by {holder}: close it, or give another port.")
            : CheckLine.Good(subject, $"{device} is there and may be opened (profile {gauge.Profile.Name}).");
    }

    // A link in /dev/serial leads to the device that the kernel lists.
    private string? DeviceOf(GaugeSetup gauge) => gauge.Port switch
    {
        GaugePort.Serial serial => serial.FinalDevice(),
        GaugePort.HidNode { Node: var node } => node,
        GaugePort.Usb usb => new UsbTerminals(roots).Find(usb.Identity),
        GaugePort.Hid hid => new HidDevices(roots).Find(hid, gauge.Profile.Hid).Node,
        _ => null,
    };
}
