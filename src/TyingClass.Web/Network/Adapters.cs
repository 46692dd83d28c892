using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace TyingClass.Web.Network;

/// <summary>This machine's adapters as they are now. IPv4 only: every club router gives it out, and it can be typed.</summary>
public sealed class Adapters : IAdapters
{
    // Names and descriptions that container programs, virtual machines and tunnels give their adapters; common practice, no source.
    private static readonly string[] VirtualMarks =
        ["docker", "veth", "br-", "virbr", "vmnet", "vboxnet", "virtual", "vethernet", "hyper-v", "tun", "tap", "wg", "utun", "zt", "bridge"];

    public IReadOnlyList<AdapterAddress> Find()
    {
        try
        {
            return
            [
                .. NetworkInterface.GetAllNetworkInterfaces().Where(IsOfUse).SelectMany(AddressesOf)
                    .OrderBy(a => a.IsVirtual).ThenByDescending(a => a.HasGateway).ThenByDescending(a => a.IsWireless).ThenBy(a => a.Adapter,
                    StringComparer.Ordinal),
            ];
        }
        catch (NetworkInformationException)
        {
            // The system would not say: an address can still be typed.
            return [];
        }
    }

    private static bool IsOfUse(NetworkInterface adapter) =>
        adapter.OperationalStatus != OperationalStatus.Down && adapter.NetworkInterfaceType != NetworkInterfaceType.Loopback;

    private static IEnumerable<AdapterAddress> AddressesOf(NetworkInterface adapter)
    {
        IPInterfaceProperties properties = adapter.GetIPProperties();
        bool hasGateway = properties.GatewayAddresses.Any(g => !g.Address.Equals(IPAddress.Any));
        bool isVirtual = adapter.NetworkInterfaceType is NetworkInterfaceType.Tunnel or NetworkInterfaceType.Ppp
            || VirtualMarks.Any(
            mark => adapter.Name.StartsWith(mark, StringComparison.OrdinalIgnoreCase)
                || adapter.Description.Contains(mark, StringComparison.OrdinalIgnoreCase));
        return properties.UnicastAddresses.Select(u => u.Address).Where(IsTyped)
            .Select(a => new AdapterAddress(adapter.Name, a, hasGateway, adapter.NetworkInterfaceType == NetworkInterfaceType.Wireless80211, isVirtual));
    }

    // 169.254.0.0/16 is what a machine gives itself when no router answered: RFC 3927, section 2.
    private static bool IsTyped(IPAddress address) =>
        address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(address) && address.GetAddressBytes() is not [169, 254, ..];
}
