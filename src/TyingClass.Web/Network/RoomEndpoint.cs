using System.Globalization;

namespace TyingClass.Web.Network;

/// <summary>
/// The web server's listeners as a piece of its configuration, which it reads again whenever it changes: so the room can be opened and
/// closed while lessons are being read at the machine itself.
/// </summary>
public sealed class RoomEndpoint : ConfigurationProvider, IConfigurationSource
{
    private const string Endpoints = "Kestrel:Endpoints";

    public IConfigurationProvider Build(IConfigurationBuilder builder) => this;

    /// <summary>Where the server listens from its start to its end. A server with "urls" and endpoints listens at its endpoints only.</summary>
    public void SetOwn(IEnumerable<string> urls) => Set("Own", urls);

    /// <summary>Where it listens to the room; none closes it.</summary>
    public void SetRoom(IEnumerable<string> urls)
    {
        Set("Room", urls);
        OnReload();
    }

    private void Set(string name, IEnumerable<string> urls)
    {
        foreach (string old in Data.Keys.Where(key => key.StartsWith($"{Endpoints}:{name}", StringComparison.Ordinal)).ToList()) Data.Remove(old);
        foreach ((int i, string url) in urls.Index()) Data[string.Create(CultureInfo.InvariantCulture, $"{Endpoints}:{name}{i}:Url")] = url;
    }
}
