using System.Net;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Storage.Files;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

/// <summary>What /health says, on a real disk: well, cannot write, and well again by itself.</summary>
public sealed class HealthTests : IDisposable
{
    private readonly ClassRoom _room = new();

    private DataFolder Folder => _room.Services.GetRequiredService<ProgramFolders>().Data;

    public void Dispose() => _room.Dispose();

    [Fact]
    public async Task Health_FolderMovedAway_CannotWriteUntilItIsBack()
    {
        Assert.Equal((HttpStatusCode.OK, "well\n"), await AskAsync());
        string away = Folder.Path + "-away";
        Directory.Move(Folder.Path, away);
        try
        {
            Assert.Equal((HttpStatusCode.ServiceUnavailable, "cannot write\n"), await AskAsync());
            Assert.Throws<StorageException>(() => _room.Store.People.AddGuest("Wren"));
            Assert.Equal((HttpStatusCode.ServiceUnavailable, "cannot write\n"), await AskAsync());
        }
        finally
        {
            Directory.Move(away, Folder.Path);
        }

        _room.Clock.Advance(TimeSpan.FromSeconds(3));
        Assert.Equal((HttpStatusCode.OK, "well\n"), await AskAsync());
        Assert.Empty(_room.Store.People.All());
    }

    [Fact]
    public async Task Health_DamageFound_SaysSoAndIsWellOtherwise()
    {
        Assert.Equal((HttpStatusCode.OK, "well\n"), await AskAsync());
        string photo = _room.Store.Photos.Add([1, 2, 3]);
        await File.WriteAllBytesAsync(Path.Combine(Folder.PhotosPath, photo + ".jpg"), [1, 2, 4], TestContext.Current.CancellationToken);
        Assert.Null(_room.Store.Photos.Find(photo));
        Assert.Equal((HttpStatusCode.OK, "well, with damage found\n"), await AskAsync());
    }

    [Fact]
    public async Task Health_AskedWithHead_IsAnsweredToo()
    {
        using HttpRequestMessage request = new(HttpMethod.Head, new Uri("/health", UriKind.Relative));
        using HttpResponseMessage answer = await _room.NewBrowser().Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    private async Task<(HttpStatusCode Status, string Said)> AskAsync()
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        using HttpResponseMessage answer = await _room.NewBrowser().Client.GetAsync(new Uri("/health", UriKind.Relative), stop);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(stop));
    }
}
