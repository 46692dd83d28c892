using System.Net;

namespace TyingClass.Web.Network;

/// <summary>One of this machine's addresses that a phone might reach.</summary>
/// <param name="Adapter">The system's name of the adapter: "Wi-Fi", "wlan0", "en0".</param>
/// <param name="HasGateway">A router stands behind it: the mark of the club's own network.</param>
/// <param name="IsWireless">Phones are most likely on the same Wi-Fi.</param>
/// <param name="IsVirtual">Made by a program (containers, virtual machines, a tunnel): phones are hardly there.</param>
public sealed record AdapterAddress(string Adapter, IPAddress Address, bool HasGateway, bool IsWireless, bool IsVirtual)
{
    /// <summary>For whoever has to pick one.</summary>
    public string Said =>
        $"{Adapter}{(IsVirtual ? ", made by a program on this machine: hardly the one" : IsWireless ? ", "
        + "Wi-Fi" : "")}{(HasGateway || IsVirtual ? "" : ", without a router")}";
}

/// <summary>Looks at the adapters; asks nobody on the network.</summary>
public interface IAdapters
{
    /// <summary>The likeliest first.</summary>
    IReadOnlyList<AdapterAddress> Find();
}
