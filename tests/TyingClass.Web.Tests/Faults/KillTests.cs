using System.Net;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>The real server, killed while answers come in: what was acknowledged is there, every time.</summary>
public sealed class KillTests : IDisposable
{
    private const int Kills = 25;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-kill-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Server_KilledAtRandomMomentsWhileAnswersComeIn_LosesNoneItAcknowledged()
    {
        Random random = new(20261129);
        CookieContainer cookies = new();
        int acknowledged = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            using ServerProcess server = await ServerProcess.StartAsync(_folder.FullName);
            Browser browser = server.NewBrowser(cookies);
            // One at least, so that there is a guest; then some more, until the plug is pulled in the midst of one.
            acknowledged += await AnswerAsync(browser);
            Task<int> more = AnswerOnAsync(browser);
            await Task.Delay(random.Next(5, 250), TestContext.Current.CancellationToken);
            server.Kill();
            acknowledged += await more;
        }

        using ClassStore store = new(DataFolder.At(_folder.FullName), TimeProvider.System);
        string guest = Assert.Single(store.People.Guests()).Id;
        int[] numbers = [.. store.Attempts.Of(guest, "first-01").Select(a => a.Number)];
        Assert.Equal(Enumerable.Range(1, numbers.Length), numbers);
        // One more at each kill may have been kept whose answer never arrived.
        Assert.InRange(numbers.Length, acknowledged, acknowledged + Kills);
        Assert.Equal(numbers.Length, store.Attempts.StandingOf(guest, "first-01").Attempts);
        store.Verify(TestContext.Current.CancellationToken);
        Assert.Empty(store.Damage.Lines);
        TestContext.Current.TestOutputHelper?.WriteLine($"{Kills} kills, {acknowledged} acknowledged, {numbers.Length} kept.");
    }

    [Fact]
    public async Task Server_ToldToStop_EndsWellAndLeavesNothingInTheLog()
    {
        if (OperatingSystem.IsWindows()) return;
        using ServerProcess server = await ServerProcess.StartAsync(_folder.FullName);
        await AnswerAsync(server.NewBrowser(new CookieContainer()));
        Assert.Equal(0, await server.StopAsync());
        DataFolder data = DataFolder.At(_folder.FullName);
        Assert.True(!File.Exists(data.LogPath) || new FileInfo(data.LogPath).Length == 0);
        using ClassStore store = new(data, TimeProvider.System);
        Assert.Single(store.Attempts.AllOf(store.People.Guests()[0].Id));
    }

    /// <summary>Found on the running program: made by root, who asks with sudo, the folder took no answer from a server that runs as another user.</summary>
    [Fact]
    public async Task Server_Running_HasMadeTheFolderInWhichABackupIsAskedFor()
    {
        using ServerProcess server = await ServerProcess.StartAsync(_folder.FullName);
        DataFolder data = DataFolder.At(_folder.FullName);
        for (int i = 0; i < 600 && !Directory.Exists(data.RequestsPath); i++) await Task.Delay(100, TestContext.Current.CancellationToken);
        Assert.True(Directory.Exists(data.RequestsPath));
    }

    [Fact]
    public async Task Server_LogDeletedAfterAKill_DoesNotStartAsIfWell()
    {
        using (ServerProcess server = await ServerProcess.StartAsync(_folder.FullName))
        {
            await AnswerAsync(server.NewBrowser(new CookieContainer()));
            server.Kill();
        }

        File.Delete(DataFolder.At(_folder.FullName).LogPath);
        await Assert.ThrowsAsync<InvalidOperationException>(() => ServerProcess.StartAsync(_folder.FullName));
        using ServerProcess accepted = await ServerProcess.StartAsync(_folder.FullName, "--accept-loss");
        using HttpResponseMessage health = await accepted.NewBrowser(new CookieContainer()).Client.GetAsync(
            new Uri("/health", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal("well, with damage found\n", await health.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    private static async Task<int> AnswerOnAsync(Browser browser)
    {
        int acknowledged = 0;
        try
        {
            while (true) acknowledged += await AnswerAsync(browser);
        }
        catch (HttpRequestException)
        {
            return acknowledged;
        }
    }

    private static async Task<int> AnswerAsync(Browser browser)
    {
        ExercisePage page = await ExercisePage.OpenAsync(browser, "first-01", "?attempt=0");
        AngleSharp.Html.Dom.IHtmlFormElement form = page.Choose("point down").Sheet.Form("form.answer");
        using FormUrlEncodedContent content = new([.. Browser.FieldsOf(form), new("do", "submit")]);
        using HttpResponseMessage answer = await browser.Client.PostAsync(
            new Uri("/exercises/first-01", UriKind.Relative), content, TestContext.Current.CancellationToken);
        return answer.StatusCode == HttpStatusCode.Redirect ? 1 : throw new InvalidOperationException($"{answer.StatusCode}");
    }
}
