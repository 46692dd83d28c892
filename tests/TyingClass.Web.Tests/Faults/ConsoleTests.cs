using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>What stands on the console of the real server after requests that no page of ours sends.</summary>
public sealed class ConsoleTests : IDisposable
{
    private const string Name = "Ptarmigan";
    private const int Rounds = 40;

    private static readonly string[] Bodies =
    [
        $"name={Name}%00", $"r:hook.[={Name}", $"{Name}[=1", string.Join('&', Enumerable.Range(0, 9000).Select(i => $"f{i}={Name}")), $"name={Name}&code=x",
    ];

    private static readonly string[] Addresses =
    [
        $"/bench?r=%00{Name}", $"/bench?handler={Name}", $"/exercises/%20{Name}", $"/lessons/%0d%0aerror:%20{Name}", $"/problem/200?x={Name}",
        "/exercises/%ff",
    ];

    // Cut off in its head.
    private const string TornForm = $"--x\r\nContent-Disposition: form-data; name=\"{Name}\"";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-console-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task HundredsOfBadRequests_AreFewLinesAndNameNobody()
    {
        if (OperatingSystem.IsWindows()) return;
        using ServerProcess server = await ServerProcess.StartAsync(_folder.FullName);
        using HttpClient client = new() { BaseAddress = new Uri(server.Address) };
        client.DefaultRequestHeaders.Add("Cookie", $"tying-sign-in={Name}; tying-guest={Name}; tying-form={Name}; tying-known={Name}");
        int sent = 0;
        for (int round = 0; round < Rounds; round++)
        {
            foreach (string body in Bodies) sent += await SendAsync(client, HttpMethod.Post, "/bench", body, "application/x-www-form-urlencoded");
            sent += await SendAsync(client, HttpMethod.Post, "/sign-in", $"{{\"name\":\"{Name}\"}}", "application/json");
            sent += await SendAsync(client, HttpMethod.Post, "/join", TornForm, "multipart/form-data; boundary=x");
            foreach (string address in Addresses) sent += await SendAsync(client, HttpMethod.Get, address, null, null);
            sent += await SendAsync(client, HttpMethod.Trace, "/bench", null, null);
            sent += await SendPieceAsync(client);
            sent += await SendNoPiecesAsync(new Uri(server.Address));
        }

        Assert.Equal(0, await server.StopAsync());
        string said = await server.SaidAsync();
        Assert.DoesNotContain(Name, said, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(" error: ", said, StringComparison.Ordinal);
        Assert.DoesNotContain(" warning: ", said, StringComparison.Ordinal);
        Assert.InRange(said.Length, 1, 5000);
        TestContext.Current.TestOutputHelper?.WriteLine($"{sent} requests, {said.Length} letters on the console.");
    }

    // A piece of a file beyond its end.
    private static async Task<int> SendPieceAsync(HttpClient client)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri("/css/tokens.css", UriKind.Relative));
        request.Headers.Range = new RangeHeaderValue(99_999_999, null);
        using HttpResponseMessage answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.RequestedRangeNotSatisfiable, answer.StatusCode);
        return 1;
    }

    // A form that says it comes in pieces, and does not.
    private static async Task<int> SendNoPiecesAsync(Uri server)
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        using TcpClient wire = new();
        await wire.ConnectAsync(server.Host, server.Port, stop);
        await wire.GetStream().WriteAsync(Encoding.ASCII.GetBytes(
            $"POST /join HTTP/1.1\r\nHost: {Name}\r\nContent-Type: application/x-www-form-urlencoded\r\nTransfer-Encoding: chunked\r\n\r\n{Name}\r\n"), stop);
        using StreamReader answer = new(wire.GetStream());
        Assert.Equal("HTTP/1.1 400 Bad Request", await answer.ReadLineAsync(stop));
        return 1;
    }

    private static async Task<int> SendAsync(HttpClient client, HttpMethod method, string address, string? body, string? type)
    {
        using HttpRequestMessage request = new(method, new Uri(address, UriKind.Relative));
        if (body is not null)
        {
            request.Content = new StringContent(body, Encoding.UTF8);
            request.Content.Headers.ContentType = MediaTypeHeaderValue.Parse(type!);
        }

        using HttpResponseMessage answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode < HttpStatusCode.InternalServerError, $"{method} {address} {body}: {answer.StatusCode}");
        return 1;
    }
}
