using System.Net;

namespace TyingClass.Web.Network;

/// <summary>Which phones opened the page that checks the network, in memory only and for an hour.</summary>
public sealed class Reaches(RoomDoor door, TimeProvider time)
{
    private static readonly TimeSpan Kept = TimeSpan.FromHours(1);

    // The page that shows it looks again every two seconds, a phone without scripting at its reader's leisure.
    private static readonly TimeSpan Watching = TimeSpan.FromSeconds(20);

    private readonly Lock _gate = new();
    private DateTimeOffset? _looked;
    private readonly Dictionary<IPAddress, DateTimeOffset> _seen = [];

    /// <returns>True when it was another machine, and so proves something about the network.</returns>
    public bool Note(ConnectionInfo connection)
    {
        ArgumentNullException.ThrowIfNull(connection);
        if (connection.RemoteIpAddress is not { } from || (!ComesFromElsewhere(connection, from) && !IsBroughtByOthers)) return false;
        lock (_gate) _seen[Plain(from)] = time.GetUtcNow();
        return true;
    }

    /// <summary>An instructor looks at the page that shows it.</summary>
    public void NoteLook()
    {
        lock (_gate) _looked = time.GetUtcNow();
    }

    /// <summary>That page is open on a screen, so that it turns green now.</summary>
    public bool IsWatched
    {
        get
        {
            lock (_gate) return _looked is { } at && time.GetUtcNow() - at < Watching;
        }
    }

    /// <summary>How many, and when the last.</summary>
    public (int Phones, DateTimeOffset? Last) Lately()
    {
        lock (_gate)
        {
            foreach (IPAddress old in _seen.Where(s => time.GetUtcNow() - s.Value > Kept).Select(s => s.Key).ToList()) _seen.Remove(old);
            return (_seen.Count, _seen.Count == 0 ? null : _seen.Values.Max());
        }
    }

    // A program in between (a whole address was given) hides who is calling.
    private bool IsBroughtByOthers => door.Choice.Address?.Contains("://", StringComparison.Ordinal) == true;

    // A machine that calls its own address calls from that address.
    private static bool ComesFromElsewhere(ConnectionInfo connection, IPAddress from) =>
        connection.LocalIpAddress is { } at && !Plain(at).Equals(Plain(from));

    private static IPAddress Plain(IPAddress address) => address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address;
}
