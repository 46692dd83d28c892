using System.Net;
using Microsoft.AspNetCore.HttpOverrides;
using TyingClass.Web.Hosting;

namespace TyingClass.Web.Network;

/// <summary>
/// Proxies in front of the server, named with --proxy: what they say of a request, whose it is and whether it came over HTTPS, is believed. Nobody else
/// is: anyone can write such a head, and pass for another address or for HTTPS.
/// </summary>
internal static class Proxies
{
    private const string Option = "proxy";

    public static bool AreKnown(IConfiguration configuration) => configuration[Option] is { Length: > 0 };

    /// <exception cref="StartRefusedException">One of them is neither an address nor a network.</exception>
    public static void Add(IServiceCollection services, IConfiguration configuration)
    {
        if (!AreKnown(configuration)) return;
        string[] named = configuration[Option]!.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        services.Configure<ForwardedHeadersOptions>(options =>
        {
            options.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            options.KnownProxies.Clear();
            options.KnownIPNetworks.Clear();
            foreach (string one in named)
            {
                if (IPAddress.TryParse(one, out IPAddress? address)) options.KnownProxies.Add(address);
                else options.KnownIPNetworks.Add(System.Net.IPNetwork.Parse(one));
            }
        });
        foreach (string one in named.Where(n => !IPAddress.TryParse(n, out _) && !System.Net.IPNetwork.TryParse(n, out _)))
            throw new StartRefusedException($"--proxy {one}: that is no address and no network. Write it as in --proxy 127.0.0.1 or --proxy 10.0.0.0/8.");
    }
}
