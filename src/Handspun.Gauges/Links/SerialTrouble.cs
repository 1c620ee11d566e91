using System.Diagnostics;

namespace Handspun.Gauges.Links;

/// <summary>Tells why a serial port did not open, in words that say what to do.</summary>
internal static class SerialTrouble
{
    // errno values, the same on Linux and macOS; .NET carries them in the inner exception's HResult.
    private const int NoEntry = 2;
    private const int NotPermitted = 1;
    private const int AccessDenied = 13;
    private const int Busy = 16;

    public static LinkUnavailableException Explain(GaugePort.Serial port, Exception thrown)
    {
        var device = port.Device;
        var errno = (thrown.InnerException ?? thrown).HResult;
        if (thrown is TimeoutException)
        {
            return new(LinkFault.NotAPort, $"{device} did not open in five seconds: unplug the gauge's cable, plug it in again, and check its driver.", thrown);
        }

        if (thrown is FileNotFoundException || errno == NoEntry || (!OperatingSystem.IsWindows() && !Path.Exists(device)))
        {
            return new(LinkFault.Absent, $"There is no {device}: plug the gauge in, or give the port that it is on.", thrown);
        }

        if (errno is AccessDenied or NotPermitted)
        {
            return new(LinkFault.NotPermitted, NotPermittedSentence(device), thrown);
        }

        if (errno == Busy || (OperatingSystem.IsWindows() && thrown is UnauthorizedAccessException))
        {
            return new(LinkFault.Busy, $"Another program holds {device}: close it, or give another port.", thrown);
        }

        return new(LinkFault.NotAPort, $"{device} does not open as a serial port: check that it is the gauge's port and that the profile's link settings suit it.", thrown);
    }

    /// <summary>What is said where this user may not open a device.</summary>
    public static string NotPermittedSentence(string device)
    {
        var group = GroupOf(device);
        return group is null or "root"
            ? $"{device} may not be opened by user '{Environment.UserName}': give that user the right to read and write it, then start again."
            : $"{device} may not be opened by user '{Environment.UserName}': that user is not in group '{group}'; run 'sudo usermod -aG {group} {Environment.UserName}', log in again and start again.";
    }

    // .NET does not tell a file's group; the system's own command does, and this runs only when a port was refused.
    private static string? GroupOf(string device)
    {
        try
        {
            var start = new ProcessStartInfo("stat") { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in OperatingSystem.IsMacOS() ? ["-L", "-f", "%Sg", device] : new[] { "-L", "-c", "%G", device })
            {
                start.ArgumentList.Add(argument);
            }

            using var stat = Process.Start(start);
            var group = stat?.StandardOutput.ReadToEnd().Trim();
            return string.IsNullOrEmpty(group) || group == "UNKNOWN" ? null : group;
        }
        catch (Exception e) when (e is System.ComponentModel.Win32Exception or InvalidOperationException)
        {
            return null;
        }
    }
}
