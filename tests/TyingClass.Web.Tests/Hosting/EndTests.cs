using Microsoft.AspNetCore.Builder;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

/// <summary>The ends a server can come to.</summary>
public sealed class EndTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-end-");

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Server_ThrownAwayAfterItsStart_EndsQuietlyAndGivesItsFolderBack(bool stoppedFirst)
    {
        WebApplication app = Build();
        await app.StartAsync(TestContext.Current.CancellationToken);
        // Longer than the servants' first round.
        await Task.Delay(1500, TestContext.Current.CancellationToken);
        if (stoppedFirst) await app.StopAsync(TestContext.Current.CancellationToken);
        await app.DisposeAsync();

        await using WebApplication next = Build();
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private WebApplication Build() =>
        Server.Build(
        ["--data", Path.Combine(_folder.FullName, "data"), "--lessons", Path.Combine(AppContext.BaseDirectory, "Course"), "--urls", "http://127.0.0.1:0"]);
}
