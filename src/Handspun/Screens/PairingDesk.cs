using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Handspun.Station;
using Microsoft.AspNetCore.Hosting.Server;

namespace Handspun.Screens;

/// <summary>What the station shows so that a screen can be paired.</summary>
internal sealed class PairingDesk(PairingCodes codes, PairedScreens screens, IServer server, ILogger<PairingDesk> logger)
{
    /// <summary>The screens that are paired.</summary>
    public PairedScreens Screens => screens;

    /// <summary>The code that is good now with the address that a screen opens; null where the station serves this machine only.</summary>
    public (PairingCode Code, Uri Address)? Offer
    {
        get
        {
            if (StationAddresses.Of(server).Screens is not { } door)
            {
                return null;
            }

            var code = codes.Current;
            return (code, new Uri(door, $"pair/{code.Text}"));
        }
    }

    /// <summary>Pairs a screen that shows a code.</summary>
    public (PairingAnswer Answer, PairedScreen? Screen, string? Token) Pair(string code, IPAddress from)
    {
        var answer = codes.TryUse(code, from);
        if (answer != PairingAnswer.Taken)
        {
            PairingLog.NotTaken(logger, from, answer);
            return (answer, null, null);
        }

        var (screen, token) = screens.Add(from);
        PairingLog.Paired(logger, screen.Number, from);
        return (answer, screen, token);
    }

    /// <summary>Unpairs a screen, and ends what it has open.</summary>
    /// <returns>False where there is no such screen.</returns>
    public bool Unpair(int number)
    {
        var found = screens.Remove(number);
        if (found)
        {
            PairingLog.Unpaired(logger, number);
        }

        return found;
    }

    /// <summary>The addresses that this machine has in a network, to choose one from.</summary>
    public static IReadOnlyList<IPAddress> OfThisMachine() =>
        [.. NetworkInterface.GetAllNetworkInterfaces()
            .Where(card => card.OperationalStatus == OperationalStatus.Up && card.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(card => card.GetIPProperties().UnicastAddresses)
            .Select(unicast => unicast.Address)
            .Where(address => address.AddressFamily == AddressFamily.InterNetwork)];

    /// <summary>How an option is written that opens the station to the shop's network.</summary>
    public static string Example() => $"--screens http://{OfThisMachine().FirstOrDefault(IPAddress.Parse("192.168.1.20"))}:5080";
}

internal static partial class PairingLog
{
    [LoggerMessage(4301, LogLevel.Information, "Screen {Screen} was paired from {Address}")]
    public static partial void Paired(ILogger logger, int screen, IPAddress address);

    [LoggerMessage(4302, LogLevel.Information, "Screen {Screen} was unpaired")]
    public static partial void Unpaired(ILogger logger, int screen);

    [LoggerMessage(4303, LogLevel.Warning, "A code from {Address} was not taken: {Answer}")]
    public static partial void NotTaken(ILogger logger, IPAddress address, PairingAnswer answer);
}
