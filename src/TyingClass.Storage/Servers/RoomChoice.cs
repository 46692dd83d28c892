namespace TyingClass.Storage.Servers;

/// <summary>Whether phones on the club's network may come in, and at which of this machine's addresses. One for the whole server.</summary>
/// <param name="IsOpen">False until someone decides: a new server is heard by its own machine only.</param>
/// <param name="Address">The address that is printed for phones: of this machine (192.168.1.20), a name (class.club), or whole (https://class.example); null
/// for the likeliest.</param>
/// <param name="Adapter">The name of the network adapter it was picked from, whose address may be another one next week; null for one that was typed.</param>
public sealed record RoomChoice(bool IsOpen, string? Address = null, string? Adapter = null);
