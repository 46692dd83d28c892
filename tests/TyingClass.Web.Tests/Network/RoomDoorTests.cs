using System.Net;
using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Storage.Servers;
using TyingClass.Web.Hosting;
using TyingClass.Web.Network;
using Xunit;

namespace TyingClass.Web.Tests.Network;

/// <summary>A real listener, opened and closed while it runs. Loopback only: 127.0.0.2 stands for the club's network.</summary>
public sealed class RoomDoorTests : IDisposable
{
    private const string Room = "127.0.0.2";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-room-");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Start_Plain_IsHeardByItsOwnMachineOnly()
    {
        await using WebApplication app = await StartAsync();
        RoomDoor door = app.Services.GetRequiredService<RoomDoor>();

        Assert.Equal(HttpStatusCode.OK, await StatusAsync($"http://127.0.0.1:{door.Port}/join"));
        await Assert.ThrowsAsync<HttpRequestException>(() => StatusAsync($"http://{Room}:{door.Port}/join"));
        Assert.False((await door.ApplyAsync()).IsOpen);
    }

    [Fact]
    public async Task Choose_WhileRunning_OpensAtOnceAndClosesAtOnce()
    {
        await using WebApplication app = await StartAsync();
        RoomDoor door = app.Services.GetRequiredService<RoomDoor>();

        door.Choose(new RoomChoice(true, Room));
        RoomState open = await door.ApplyAsync();

        Assert.Equal($"http://{Room}:{door.Port}", open.Root);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(open.Root + "/join"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync($"http://127.0.0.1:{door.Port}/join"));

        door.Choose(new RoomChoice(false, Room));
        Assert.False((await door.ApplyAsync()).IsOpen);
        await Assert.ThrowsAsync<HttpRequestException>(() => StatusAsync($"http://{Room}:{door.Port}/join"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync($"http://127.0.0.1:{door.Port}/join"));
    }

    [Fact]
    public async Task Choose_Kept_OpensAtTheNextStart()
    {
        await using (WebApplication first = await StartAsync()) first.Services.GetRequiredService<RoomDoor>().Choose(new RoomChoice(true, Room));

        await using WebApplication app = await StartAsync();
        RoomState state = await app.Services.GetRequiredService<RoomDoor>().ApplyAsync();

        Assert.Equal(HttpStatusCode.OK, await StatusAsync(state.Root + "/join"));
    }

    [Fact]
    public async Task Start_WithRoom_IsOpenAndForgottenAtTheNextStart()
    {
        await using (WebApplication first = await StartAsync("--room", "--room-address", Room))
            Assert.True((await first.Services.GetRequiredService<RoomDoor>().ApplyAsync()).IsOpen);

        await using WebApplication app = await StartAsync();
        Assert.False((await app.Services.GetRequiredService<RoomDoor>().ApplyAsync()).IsOpen);
    }

    [Fact]
    public async Task Choose_AddressThatIsTaken_StaysClosedAndSaysWhy()
    {
        await using WebApplication app = await StartAsync();
        RoomDoor door = app.Services.GetRequiredService<RoomDoor>();
        using System.Net.Sockets.TcpListener other = new(IPAddress.Parse(Room), door.Port);
        other.Start();

        door.Choose(new RoomChoice(true, Room));
        RoomState state = await door.ApplyAsync();

        Assert.False(state.IsOpen);
        Assert.Contains($"Another program on this machine has {Room}:{door.Port}", state.Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Choose_AddressOfAnotherMachine_StaysClosedAndSaysWhy()
    {
        await using WebApplication app = await StartAsync();
        RoomDoor door = app.Services.GetRequiredService<RoomDoor>();

        // RFC 5737: for documentation, never anyone's own.
        door.Choose(new RoomChoice(true, "203.0.113.7"));

        Assert.Contains("203.0.113.7 is not an address of this machine", (await door.ApplyAsync()).Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reached_FromElsewhere_CountsAndFromTheMachineItselfDoesNot()
    {
        await using WebApplication app = await StartAsync("--room", "--room-address", Room);
        RoomDoor door = app.Services.GetRequiredService<RoomDoor>();
        Reaches reaches = app.Services.GetRequiredService<Reaches>();
        await door.ApplyAsync();

        Assert.Contains("says nothing about the network", await TextAsync($"http://127.0.0.1:{door.Port}/reached"), StringComparison.Ordinal);
        Assert.Equal(0, reaches.Lately().Phones);

        // Nobody looks at the instructor's page: no screen has turned green.
        string unseen = await TextAsync(door.State.Root + "/reached");
        Assert.Contains("Your phone reached the class", unseen, StringComparison.Ordinal);
        Assert.DoesNotContain("green", unseen, StringComparison.Ordinal);
        Assert.Equal(1, reaches.Lately().Phones);
        reaches.NoteLook();
        Assert.Contains("turns green now", await TextAsync(door.State.Root + "/reached"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Start_WithACertificate_ServesTheRoomOverHttps(bool pem)
    {
        using X509Certificate2 made = SelfMade();
        await using WebApplication app = await StartAsync(["--room", "--room-address", Room, .. Files(made, pem)]);
        RoomState state = await app.Services.GetRequiredService<RoomDoor>().ApplyAsync();

        Assert.StartsWith($"https://{Room}:", state.Root, StringComparison.Ordinal);
        string? shown = null;
        using SocketsHttpHandler handler = new()
        {
            SslOptions = new SslClientAuthenticationOptions
            {
                RemoteCertificateValidationCallback =
                (_, certificate, _, _) => (shown = certificate?.GetCertHashString()) is not null
            },
        };
        using HttpClient client = new(handler);
        using HttpResponseMessage answer = await client.GetAsync(new Uri(state.Root + "/join"), Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(made.GetCertHashString(), shown);
        Assert.Contains(state.Root + "/join", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Start_CertificateFileThatIsNone_IsRefusedInWords()
    {
        string path = Path.Combine(_folder.FullName, "no.pem");
        await File.WriteAllTextAsync(path, "not one", Cancel);
        StartRefusedException refused = Assert.Throws<StartRefusedException>(() => Build("--certificate", path));
        Assert.Contains(path, refused.Message, StringComparison.Ordinal);
        Assert.Contains("--certificate-key", refused.Message, StringComparison.Ordinal);
    }

    private static X509Certificate2 SelfMade()
    {
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new("CN=class.club", key, HashAlgorithmName.SHA256);
        return request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
    }

    private string[] Files(X509Certificate2 made, bool pem)
    {
        string path = Path.Combine(_folder.FullName, pem ? "class.pem" : "class.pfx"), key = Path.Combine(_folder.FullName, "key.pem");
        if (!pem)
        {
            File.WriteAllBytes(path, made.Export(X509ContentType.Pfx));
            return ["--certificate", path];
        }

        File.WriteAllText(path, made.ExportCertificatePem());
        File.WriteAllText(key, made.GetECDsaPrivateKey()!.ExportPkcs8PrivateKeyPem());
        return ["--certificate", path, "--certificate-key", key];
    }

    private async Task<WebApplication> StartAsync(params string[] more)
    {
        WebApplication app = Build(more);
        await app.StartAsync(Cancel);
        return app;
    }

    private WebApplication Build(params string[] more) => Server.Build(
        ["--data", Path.Combine(_folder.FullName, "data"), "--lessons", Path.Combine(AppContext.BaseDirectory, "Course"), "--urls", "http://127.0.0.1:0",
            .. more]);

    private static async Task<HttpStatusCode> StatusAsync(string address)
    {
        using HttpClient client = new();
        using HttpResponseMessage answer = await client.GetAsync(new Uri(address), Cancel);
        return answer.StatusCode;
    }

    private static async Task<string> TextAsync(string address)
    {
        using HttpClient client = new();
        return await client.GetStringAsync(new Uri(address), Cancel);
    }
}
