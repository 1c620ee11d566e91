using System.Net;

namespace Handspun.Station;

/// <summary>The address of the pages, as it stands on the command line.</summary>
internal static class HttpAddress
{
    /// <summary>What is used when nothing is said.</summary>
    public const string Default = "http://127.0.0.1:5080";

    /// <summary>Reads an address.</summary>
    /// <exception cref="StationTroubleException">It is no address, or not one of this machine alone.</exception>
    public static IPEndPoint Parse(string text)
    {
        if (!Uri.TryCreate(text, UriKind.Absolute, out var uri) || uri.Scheme != Uri.UriSchemeHttp || uri.AbsolutePath != "/")
        {
            throw new StationTroubleException($"--http {text} is no address: write it as {Default}.", StationTroubleException.Usage);
        }

        var address = uri.IsLoopback && uri.HostNameType == UriHostNameType.Dns ? IPAddress.Loopback
            : IPAddress.TryParse(uri.Host.Trim('[', ']'), out var given) ? given
            : null;
        return address is not null && IPAddress.IsLoopback(address)
            ? new IPEndPoint(address, uri.Port)
            : throw new StationTroubleException($"--http {text} is not on this machine alone: screens of the shop's network cannot be paired yet, so give a loopback address such as {Default}.", StationTroubleException.Usage);
    }
}
