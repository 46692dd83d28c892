using System.Net;
using TyingClass.Storage.Servers;

namespace TyingClass.Web.Network;

/// <summary>The instructor's choice on the Setup page.</summary>
public sealed class RoomSetup(RoomDoor door, IHttpContextAccessor accessor)
{
    private const int MostLength = 200;

    /// <param name="picked">One of this machine's addresses, "typed", or blank for the likeliest.</param>
    /// <param name="typed">With "typed": a name, an address, or a whole one with http:// or https://.</param>
    /// <returns>What is wrong with it; null when it was kept.</returns>
    public async Task<string?> OpenAsync(string? picked, string? typed)
    {
        string name = (typed ?? "").Trim();
        // What was typed anew is meant, whichever line is marked beside it.
        bool typedAnew = name.Length > 0 && name != door.Choice.Address;
        if (picked == Typed || typedAnew)
        {
            name = OwnAddress(name) ?? name;
            if (Wrong(name) is { } wrong) return wrong;
            if (IPAddress.TryParse(name, out IPAddress? address) && !IsHere(address))
                return $"{name} is not an address of this machine, so nothing was changed. Pick one from the list, or type the name the network knows it by.";
            await KeepAsync(new RoomChoice(true, name));
            return null;
        }

        AdapterAddress? found = door.Addresses.FirstOrDefault(a => a.Address.ToString() == picked);
        if (found is null && !string.IsNullOrEmpty(picked)) return $"{picked} is no longer an address of this machine. Pick another.";
        await KeepAsync(new RoomChoice(true, found?.Address.ToString(), found?.Adapter));
        return null;
    }

    public Task CloseAsync() => KeepAsync(door.Choice with { IsOpen = false });

    /// <summary>The value of the choice that brings a typed address.</summary>
    public const string Typed = "typed";

    /// <summary>Whoever looks came in through the room's address: closing it takes the page away as well.</summary>
    public bool CameThroughTheRoom =>
        accessor.HttpContext?.Connection.LocalIpAddress is { } at && door.State.Listen.Contains(at.IsIPv4MappedToIPv6 ? at.MapToIPv4() : at);

    private async Task KeepAsync(RoomChoice choice)
    {
        door.Choose(choice);
        if (!CameThroughTheRoom) await door.ApplyAsync();
        // The listener that brought this request waits for its answer before it closes.
        else accessor.HttpContext!.Response.OnCompleted(() => { _ = door.ApplyAsync(); return Task.CompletedTask; });
    }

    // Copied from where it is printed, with http:// and the port: the address alone is meant, and the server itself listens there.
    private string? OwnAddress(string name) =>
        Uri.TryCreate(name, UriKind.Absolute, out Uri? whole) && whole.Scheme == Uri.UriSchemeHttp && whole.PathAndQuery == "/"
            && IPAddress.TryParse(whole.DnsSafeHost, out IPAddress? address) && IsHere(address)
            ? address.ToString()
            : null;

    private bool IsHere(IPAddress address) => IPAddress.IsLoopback(address) || door.Addresses.Any(a => a.Address.Equals(address));

    private static string? Wrong(string name)
    {
        if (name.Length is 0 or > MostLength) return "Type the address, or pick one from the list.";
        if (name.Contains("://", StringComparison.Ordinal))
        {
            return Uri.TryCreate(name, UriKind.Absolute, out Uri? whole) && (whole.Scheme == Uri.UriSchemeHttp || whole.Scheme == Uri.UriSchemeHttps)
                && whole.PathAndQuery == "/"
                ? null
                : $"“{name}” is no address of a server. A whole one looks like https://class.example, without anything after the name.";
        }

        return IPAddress.TryParse(name, out _) || Uri.CheckHostName(name) == UriHostNameType.Dns ? null
            : $"“{name}” is neither a name nor an address. Type one such as 192.168.1.20 or class.club, without http:// and without a port.";
    }
}
