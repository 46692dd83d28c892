using TyingClass.Web.Network;

namespace TyingClass.Web.Hosting;

/// <summary>Where the server listens, and who knows the address phones can reach.</summary>
internal static class NetworkServices
{
    private const string AddressOption = "room-address";

    public static void Add(WebApplicationBuilder builder, StartFlags flags)
    {
        RoomEndpoint endpoint = new();
        if (!builder.Configuration.GetSection("Kestrel:Endpoints").Exists())
        {
            string[] urls = Urls(builder.Configuration);
            ListenAddresses.Check(urls);
            endpoint.SetOwn(urls);
        }

        bool hasCertificate = Certificate.Use(builder.Configuration);
        builder.Configuration.Sources.Add(endpoint);
        builder.Services.AddSingleton(endpoint);
        builder.Services.AddSingleton(new RoomStart(flags.Room, builder.Configuration[AddressOption], hasCertificate));
        builder.Services.AddSingleton<IAdapters, Adapters>();
        builder.Services.AddSingleton<RoomDoor>();
        builder.Services.AddSingleton<Reaches>();
        builder.Services.AddScoped<ClassAddress>();
        builder.Services.AddScoped<RoomSetup>();
        builder.Services.AddHostedService<RoomKeeper>();
        Proxies.Add(builder.Services, builder.Configuration);
    }

    private static string[] Urls(ConfigurationManager configuration) =>
        (configuration[WebHostDefaults.ServerUrlsKey] is { Length: > 0 } asked ? asked : Server.DefaultAddress).Split(';',
        StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
