namespace TyingClass.Web.Network;

/// <summary>What the command line says about the room; it counts for this run and is not kept.</summary>
/// <param name="Open">--room.</param>
/// <param name="Address">--room-address: what is printed for phones, and where it listens if it is an address of this machine.</param>
/// <param name="HasCertificate">The room is served over HTTPS.</param>
public sealed record RoomStart(bool Open, string? Address, bool HasCertificate);
