using System.Collections.Immutable;
using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using TyingClass.Storage.Servers;

namespace TyingClass.Web.Network;

/// <summary>Opens and closes the server to the club's network while it runs, and knows the address phones can reach.</summary>
public sealed class RoomDoor(RoomChoiceStore store, RoomStart start, RoomEndpoint endpoint, IAdapters adapters, IServer server) : IDisposable
{
    // The web server gives open connections five seconds to end before it closes an address.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(8);

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(50);

    private readonly SemaphoreSlim _oneAtATime = new(1);
    private RoomChoice? _choice;

    /// <summary>Closed until the server listens.</summary>
    public RoomState State { get; private set; } = RoomState.Closed;

    /// <summary>In force in this run: what was kept, or else what the command line asked for.</summary>
    public RoomChoice Choice => _choice ??= AtStart(store.Get());

    /// <summary>What the command line asked for at this start.</summary>
    public RoomStart Start => start;

    public IReadOnlyList<AdapterAddress> Addresses => adapters.Find();

    /// <summary>The port phones use.</summary>
    public int Port => Own().Select(u => u.Port).FirstOrDefault(Hosting.Server.DefaultPort);

    /// <summary>Keeps the choice for this run and the next ones. <see cref="ApplyAsync"/> carries it out.</summary>
    public void Choose(RoomChoice chosen)
    {
        store.Keep(chosen);
        _choice = chosen;
    }

    /// <summary>Makes the listeners what the choice comes to on the adapters as they are now; does nothing when they are that already.</summary>
    public async Task<RoomState> ApplyAsync()
    {
        await _oneAtATime.WaitAsync();
        try
        {
            return State = await MakeAsync(RoomPlan.Of(Choice, adapters.Find()));
        }
        finally
        {
            _oneAtATime.Release();
        }
    }

    public void Dispose() => _oneAtATime.Dispose();

    private RoomChoice AtStart(RoomChoice kept)
    {
        RoomChoice asked = start.Open ? kept with { IsOpen = true } : kept;
        return start.Address is { } address ? asked with { Address = address, Adapter = null } : asked;
    }

    private async Task<RoomState> MakeAsync(RoomPlan plan)
    {
        // Told at the start to listen everywhere: there is nothing to open, only an address to choose.
        if (Own().FirstOrDefault(u => !u.IsLoopback) is { } everywhere) return ListeningAlready(plan, everywhere);
        if (!Listens() && plan.Host is not null && !plan.IsWhole) return RoomState.Closed with { Trouble = "This server has no listener of its own." };
        string scheme = start.HasCertificate ? Uri.UriSchemeHttps : Uri.UriSchemeHttp;
        ImmutableArray<IPAddress> listen = plan.Listen;
        foreach (IPAddress address in listen.Except(State.Listen))
            if (BindTrouble.At(address, Port) is { } trouble)
                (listen, plan) = ([], plan with { Host = null, Trouble = trouble });
        if (!listen.SequenceEqual(State.Listen) && !await ListenAsync(scheme, listen))
            (listen, plan) = ([], plan with { Host = null, Trouble = "The web server did not open that address. Stop it and start it again." });
        string? root = plan.Host is null ? null : plan.IsWhole ? plan.Host : $"{scheme}://{plan.Host}:{Port}";
        return new RoomState(root, listen, plan.Trouble, plan.Note);
    }

    private RoomState ListeningAlready(RoomPlan plan, Uri everywhere)
    {
        if (plan.Host is null) plan = RoomPlan.Of(Choice with { IsOpen = true }, adapters.Find());
        bool named = IPAddress.TryParse(everywhere.Host.Trim('[', ']'), out IPAddress? one) && !one.Equals(IPAddress.Any) && !one.Equals(IPAddress.IPv6Any);
        string? host = named && Choice.Address is null ? everywhere.Host : plan.Host;
        return new RoomState(host is null ? null : plan.IsWhole ? host : $"{everywhere.Scheme}://{host}:{everywhere.Port}", [], plan.Trouble, plan.Note);
    }

    private async Task<bool> ListenAsync(string scheme, ImmutableArray<IPAddress> listen)
    {
        string[] wanted = [.. listen.Select(address => $"{scheme}://{address}:{Port}")],
            before = [.. State.Listen.Select(address => $"{scheme}://{address}:{Port}")];
        endpoint.SetRoom(wanted);
        for (TimeSpan waited = TimeSpan.Zero; waited < Patience; waited += Look)
        {
            if (wanted.All(Bound().Contains) && !before.Except(wanted).Any(Bound().Contains)) return true;
            await Task.Delay(Look);
        }

        return false;
    }

    private bool Listens() => Bound().Count > 0;

    private ICollection<string> Bound() => server.Features.Get<IServerAddressesFeature>()?.Addresses ?? [];

    private IEnumerable<Uri> Own() => Bound().Select(address => new Uri(address)).Where(u => !State.Listen.Any(l => l.ToString() == u.Host));
}
