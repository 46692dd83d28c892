using System.Net;
using System.Net.Sockets;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Security;

/// <summary>
/// Slows down guessing at passphrases and codes. Counted are wrong tries, by name and address together: a phone that guesses at a name makes only itself
/// wait. A browser that has opened an account before is counted by itself, so nobody in its room or elsewhere can make it wait. Wider counts, of a name from
/// everywhere and of an address whatever the name, add short waits and never refuse.
/// </summary>
public sealed class Doors(Delays delays, KnownDevices devices, IHttpContextAccessor accessor)
{
    public const int FreeTries = 5;

    // A room full of phones mistypes a good deal.
    private const int FreeOfAddress = 60;
    private const int FreeOfName = 30;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan LongestOfMany = TimeSpan.FromSeconds(3);

    private HttpContext Http => accessor.HttpContext ?? throw new InvalidOperationException("Nobody stands at a door outside a request.");

    /// <summary>One more passphrase for an account.</summary>
    /// <param name="nameKey">Two names with one key are one.</param>
    /// <param name="personId">Of the account, where there is one.</param>
    /// <returns>Null when too many tries of the same kind are waiting.</returns>
    public Task<DelayedTry?> TryNameAsync(string nameKey, string? personId) =>
        personId is not null && devices.Of(Http, personId) is { } device
            ? TakeAsync($"device {device} {personId}", FreeTries)
            : TakeAsync($"name {nameKey} from {Address}", FreeTries, new DelayRule($"name {nameKey}", FreeOfName, LongestOfMany));

    /// <summary>One more passphrase typed by somebody who is signed in, for a change of it.</summary>
    public Task<DelayedTry?> TryOwnAsync(string personId) => TakeAsync($"own {personId}", FreeTries);

    /// <summary>One more code, of a class or an instructor, from this address. A whole room may mistype it once or twice.</summary>
    public Task<DelayedTry?> TryCodeAsync() => TakeAsync($"code from {Address}", FreeOfAddress);

    private Task<DelayedTry?> TakeAsync(string key, int free, params DelayRule[] wider) => delays.TakeAsync(
        new DelayRule(key, free, Longest), [.. wider, new DelayRule($"address {Address}", FreeOfAddress, LongestOfMany)], Http.RequestAborted);

    private string Address => Network(Http.Connection.RemoteIpAddress);

    /// <summary>An address as one asker: one household has 2⁶⁴ of the sixth version.</summary>
    public static string Network(IPAddress? address) => address switch
    {
        null => "unknown",
        { IsIPv4MappedToIPv6: true } => address.MapToIPv4().ToString(),
        { AddressFamily: AddressFamily.InterNetworkV6 } => Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8)),
        _ => address.ToString(),
    };
}
