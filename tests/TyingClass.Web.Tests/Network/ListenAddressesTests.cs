using System.Net.Sockets;
using TyingClass.Web.Hosting;
using TyingClass.Web.Network;
using Xunit;

namespace TyingClass.Web.Tests.Network;

/// <summary>Where the server listens is what was asked for, or it does not start.</summary>
public sealed class ListenAddressesTests
{
    [Theory]
    [InlineData("http://localhost:5081"), InlineData("http://LOCALHOST:5081/"), InlineData("http://127.0.0.1:0"), InlineData("https://0.0.0.0:443")]
    [InlineData("http://[::1]:5081"), InlineData("http://[::]:65535"), InlineData("http://*:5081"), InlineData("http://+:80")]
    [InlineData("http://192.168.1.20")]
    public void Check_AddressOfAMachine_IsTaken(string url) => ListenAddresses.Check([url]);

    /// <summary>The first was seen to listen at port 80 of every address, the second and third ended in an error of the framework's.</summary>
    [Theory]
    [InlineData("http://127.0.0.1:80x"), InlineData("nonsense"), InlineData("http://127.0.0.1:99999"), InlineData("http://127.0.0.1:-1")]
    [InlineData("localhost:5081"), InlineData("http://loclhost:5081"), InlineData("http://127.0.0.l:5081"), InlineData("http://:5081")]
    [InlineData("http://5081")]
    [InlineData("http://localhost:5081/class"), InlineData("ftp://localhost:5081"), InlineData("http://localhost:"), InlineData("http://")]
    public void Check_MistypedAddress_IsNamedAndNothingStarts(string url)
    {
        StartRefusedException refused = Assert.Throws<StartRefusedException>(() => ListenAddresses.Check(["http://localhost:5081", url]));
        Assert.Contains($"--urls {url}:", refused.Message, StringComparison.Ordinal);
        Assert.Contains("--urls http://localhost:5081", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SocketError.AccessDenied, "Ports below 1024"), InlineData(SocketError.AddressNotAvailable, "does not have the address")]
    public void WhyNot_OneOfTheTwoOfLocalhost_IsSaid(SocketError error, string said)
    {
        IOException failed = new("Failed to bind", new AggregateException(new SocketException((int)error), new SocketException((int)error)));
        Assert.Contains(said, ListenAddresses.WhyNot(failed), StringComparison.Ordinal);
        Assert.Null(ListenAddresses.WhyNot(new IOException("A disk failed.")));
    }
}
