using System.Net;
using System.Net.Sockets;

namespace TyingClass.Web.Network;

/// <summary>Tries an address before the web server is told to listen there: it only logs what goes wrong, and we want to say it.</summary>
internal static class BindTrouble
{
    /// <returns>Null when one can listen there.</returns>
    public static string? At(IPAddress address, int port)
    {
        try
        {
            using Socket socket = new(address.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
            socket.Bind(new IPEndPoint(address, port));
            return null;
        }
        catch (SocketException e)
        {
            return e.SocketErrorCode switch
            {
                SocketError.AddressAlreadyInUse =>
                    $"Another program on this machine has {address}:{port}. Stop it, or start TyingClass at another port with --urls http://localhost:5081.",
                SocketError.AddressNotAvailable => $"{address} is not an address of this machine. Pick one from the list.",
                SocketError.AccessDenied =>
                    $"The system does not let TyingClass listen at {address}:{port}. Ports below 1024 are for the administrator: use 5080.",
                _ => $"The system cannot listen at {address}:{port}: {e.Message}",
            };
        }
    }
}
