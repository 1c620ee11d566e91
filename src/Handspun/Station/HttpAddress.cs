using System.Net;

namespace Handspun.Station;

/// <summary>The address of the pages, as it stands on the command line.</summary>
internal static class HttpAddress
{
    /// <summary>What is used when nothing is said.</summary>
    public const string Default = "http://127.0.0.1:5080";

    private const string ScreensExample = "http://192.168.1.20:5080";

    /// <summary>Reads an address.</summary>
    /// <exception cref="StationTroubleException">It is no address, or not one of this machine alone.</exception>
    public static IPEndPoint Parse(string text)
    {
        var uri = Read("--http", text, Default);
        var address = uri.IsLoopback && uri.HostNameType == UriHostNameType.Dns ? IPAddress.Loopback : AddressIn(uri);
        return address is not null && IPAddress.IsLoopback(address)
            ? new IPEndPoint(address, uri.Port)
            : throw new StationTroubleException($"--http {text} is not on this machine alone: give a loopback address such as {Default}, and let the shop's network in with --screens.", StationTroubleException.Usage);
    }

    /// <summary>Reads the address at which screens of the shop's network reach the pages: one that this machine has there.</summary>
    /// <exception cref="StationTroubleException">It is no address, a name, or every address at once.</exception>
    public static IPEndPoint ParseScreens(string text)
    {
        var uri = Read("--screens", text, ScreensExample);
        return AddressIn(uri) is { } address && !address.Equals(IPAddress.Any) && !address.Equals(IPAddress.IPv6Any)
            ? new IPEndPoint(address, uri.Port)
            : throw new StationTroubleException($"--screens {text} is no one address: give that which this machine has in the shop's network, in digits, such as {ScreensExample}.", StationTroubleException.Usage);
    }

    private static Uri Read(string option, string text, string example) =>
        Uri.TryCreate(text, UriKind.Absolute, out var uri) && uri.Scheme == Uri.UriSchemeHttp && uri.AbsolutePath == "/"
            ? uri
            : throw new StationTroubleException($"{option} {text} is no address: write it as {example}.", StationTroubleException.Usage);

    private static IPAddress? AddressIn(Uri uri) => IPAddress.TryParse(uri.Host.Trim('[', ']'), out var given) ? given : null;
}
