using System.Globalization;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Handspun.Station;
using Microsoft.AspNetCore.Hosting.Server;

namespace Handspun.Screens;

/// <summary>What the station shows so that a screen can be paired.</summary>
internal sealed class PairingDesk(PairingCodes codes, PairedScreens screens, IServer server, StationOptions options)
{
    /// <summary>Whether the station serves the shop's network at all.</summary>
    public bool IsOpen => options.Screens is not null;

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
        return answer == PairingAnswer.Taken && screens.Add(from) is var (screen, token) ? (answer, screen, token) : (answer, null, null);
    }

    /// <summary>The addresses that this machine has in a network, to choose one from.</summary>
    public static IReadOnlyList<IPAddress> OfThisMachine() =>
        [.. NetworkInterface.GetAllNetworkInterfaces()
            .Where(card => card.OperationalStatus == OperationalStatus.Up && card.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(card => card.GetIPProperties().UnicastAddresses)
            .Select(unicast => unicast.Address)
            .Where(address => address.AddressFamily == AddressFamily.InterNetwork)];

    /// <summary>How an option is written that opens the station to the shop's network.</summary>
    public static string Example() => string.Create(CultureInfo.InvariantCulture, $"--screens http://{OfThisMachine().FirstOrDefault(IPAddress.Parse("192.168.1.20"))}:{ExamplePort}");

    private const int ExamplePort = 5080;
}
