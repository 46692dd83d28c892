namespace TyingClass.Web.Network;

/// <summary>
/// The address to print, wherever one is printed: that which phones can reach while the server is open to the room, else that by which
/// whoever looks came in.
/// </summary>
public sealed class ClassAddress(RoomDoor door, IHttpContextAccessor accessor)
{
    /// <summary>"http://192.168.1.20:5080".</summary>
    public string Root => door.State.Root ?? Asked;

    /// <summary>False when only this machine can open the address: then say so beside it, and print no code for phones.</summary>
    public bool ReachesPhones => door.State.IsOpen || !IsThisMachine(accessor.HttpContext?.Request.Host.Host);

    /// <param name="path">Such as "/join?code=reed-copper-lantern".</param>
    public string Of(string path) => Root + path;

    /// <summary>To be read aloud or typed from a wall: without the scheme where browsers need none.</summary>
    public string Typed(string path) => Of(path) is var whole && whole.StartsWith("http://", StringComparison.Ordinal) ? whole["http://".Length..] : whole;

    /// <summary>Where a phone joins, the class code filled in.</summary>
    public static string JoinPath(string? classCode) => classCode is null ? "/join" : $"/join?code={Uri.EscapeDataString(classCode)}";

    private string Asked => accessor.HttpContext is { } http ? $"{http.Request.Scheme}://{http.Request.Host}" : Hosting.Server.DefaultAddress;

    private static bool IsThisMachine(string? host) =>
        host is null or "localhost"
        || (System.Net.IPAddress.TryParse(host.Trim('[', ']'), out System.Net.IPAddress? address) && System.Net.IPAddress.IsLoopback(address));
}
