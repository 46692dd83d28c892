using System.Collections.Immutable;
using System.Net;
using TyingClass.Storage.Servers;

namespace TyingClass.Web.Network;

/// <summary>What a choice comes to on the adapters there are now.</summary>
/// <param name="Host">Printed for phones; null when the room is closed or there is no network.</param>
/// <param name="Listen">Addresses of this machine to listen at.</param>
/// <param name="Trouble">Why phones cannot come in although the room should be open.</param>
/// <param name="Note">What the instructor ought to know though it works.</param>
public sealed record RoomPlan(string? Host, ImmutableArray<IPAddress> Listen, string? Trouble = null, string? Note = null)
{
    public static RoomPlan Closed { get; } = new(null, []);

    /// <summary>The host is a whole address, with scheme and port: something else brings phones there.</summary>
    public bool IsWhole => Host?.Contains("://", StringComparison.Ordinal) == true;

    public static RoomPlan Of(RoomChoice choice, IReadOnlyList<AdapterAddress> adapters)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(adapters);
        if (!choice.IsOpen) return Closed;
        if (choice is { Address: { } typed, Adapter: null }) return OfTyped(typed, adapters);
        if (adapters.Count == 0) return Nowhere;
        if (choice.Address is null) return At(adapters[0].Address);
        if (adapters.FirstOrDefault(a => a.Address.ToString() == choice.Address) is { } same) return At(same.Address);
        AdapterAddress next = adapters.FirstOrDefault(a => a.Adapter == choice.Adapter) ?? adapters[0];
        return At(next.Address) with
        {
            Note =
            $"The address picked before, {choice.Address}, is gone; {next.Address} ({next.Adapter}) stands in for it. Print slips and codes anew."
        };
    }

    private static RoomPlan Nowhere =>
        new(null, [], "This machine is on no network. Join the club’s Wi-Fi, or plug in its cable; the room opens by itself then.");

    private static RoomPlan At(IPAddress address) => new(address.ToString(), [address]);

    private static RoomPlan OfTyped(string typed, IReadOnlyList<AdapterAddress> adapters)
    {
        if (typed.Contains("://", StringComparison.Ordinal)) return new RoomPlan(typed.TrimEnd('/'), []);
        if (IPAddress.TryParse(typed, out IPAddress? address)) return At(address);
        // Whose name it is would have to be asked of the network; nobody is asked.
        return adapters.Count == 0 ? Nowhere : new RoomPlan(typed, [.. adapters.Where(a => !a.IsVirtual).DefaultIfEmpty(adapters[0]).Select(a => a.Address)]);
    }
}
