using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using TyingClass.Web.Hosting;

namespace TyingClass.Web.Network;

/// <summary>
/// What --urls asks for, looked at before the web server sees it: that takes a name it does not know for every address of the machine, so that a mistyped
/// one would open the class to the network.
/// </summary>
internal static class ListenAddresses
{
    private static readonly string[] Schemes = ["http://", "https://"];

    // The last two mean every address, as whoever writes them knows.
    private static readonly string[] Named = ["localhost", "*", "+"];

    /// <exception cref="StartRefusedException">One of them is no address to listen at.</exception>
    public static void Check(IEnumerable<string> urls)
    {
        if (urls.FirstOrDefault(u => !IsOne(u)) is not { } wrong) return;
        throw new StartRefusedException(
            $"--urls {wrong}: TyingClass cannot listen there. Write it as in --urls http://localhost:5081: this machine only, with a number up to 65535 at the "
            + "end. With http://0.0.0.0:5081 whoever is on the network gets in. A name is not taken: what phones are told is --room-address.");
    }

    /// <summary>What to say when the web server cannot listen where it was told to. Null when something else went wrong.</summary>
    public static string? WhyNot(Exception e) => e switch
    {
        IOException { InnerException: AddressInUseException } =>
            $"{e.Message} Another program has that address. Stop it, or choose another with --urls http://localhost:5081",
        // At localhost two addresses were tried.
        IOException { InnerException: AggregateException tried } => tried.InnerExceptions.Select(WhyNot).FirstOrDefault(w => w is not null),
        SocketException { SocketErrorCode: SocketError.AccessDenied } =>
            "The system does not let TyingClass listen at the address of --urls. Ports below 1024 are for the administrator, and Windows keeps others for "
            + "itself. Choose another with --urls http://localhost:5081",
        SocketException { SocketErrorCode: SocketError.AddressNotAvailable } =>
            "This machine does not have the address that --urls names. Use http://localhost:5081 for this machine only, http://0.0.0.0:5081 for the network.",
        SocketException => $"TyingClass cannot listen at the address of --urls: {e.Message}. Choose another with --urls http://localhost:5081",
        _ => null,
    };

    private static bool IsOne(string url)
    {
        if (Schemes.FirstOrDefault(s => url.StartsWith(s, StringComparison.OrdinalIgnoreCase)) is not { } scheme) return false;
        string place = url[scheme.Length..].TrimEnd('/');
        int colon = place.LastIndexOf(':');
        bool hasPort = colon > place.LastIndexOf(']');
        if (hasPort && !IsPort(place[(colon + 1)..])) return false;
        string host = hasPort ? place[..colon] : place;
        // A bare number would be an address too: 80 is 0.0.0.80.
        return Named.Contains(host, StringComparer.OrdinalIgnoreCase) || (host.IndexOfAny(['.', '[']) >= 0 && IPAddress.TryParse(host, out _));
    }

    private static bool IsPort(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int port) && port <= IPEndPoint.MaxPort;
}
