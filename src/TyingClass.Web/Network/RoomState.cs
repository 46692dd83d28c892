using System.Collections.Immutable;
using System.Net;

namespace TyingClass.Web.Network;

/// <summary>How the server stands toward the room, right now.</summary>
/// <param name="Root">The address for phones, "http://192.168.1.20:5080", without a slash at its end; null while they cannot come in.</param>
/// <param name="Listen">Addresses of this machine it listens to the room at.</param>
/// <param name="Trouble">Why they cannot although they should.</param>
/// <param name="Note">What the instructor ought to know though it works.</param>
public sealed record RoomState(string? Root, ImmutableArray<IPAddress> Listen, string? Trouble = null, string? Note = null)
{
    public static RoomState Closed { get; } = new(null, []);

    public bool IsOpen => Root is not null;
}
