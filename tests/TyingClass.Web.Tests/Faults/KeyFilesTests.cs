using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

public sealed class KeyFilesTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-keys-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData("")]
    [InlineData("<?xml version=\"1.0\"?><key id=\"1\"><creationDate>2026")]
    [InlineData("\0\0\0\0\0\0\0\0")]
    public void PutAsideTorn_KeyThatIsNotWhole_IsKeptUnderAnotherName(string torn)
    {
        string whole = Path.Combine(_folder.FullName, "key-1.xml"), hit = Path.Combine(_folder.FullName, "key-2.xml");
        File.WriteAllText(whole, "<key id=\"1\"/>");
        File.WriteAllText(hit, torn);
        Assert.Equal([hit], KeyFiles.PutAsideTorn(_folder.FullName));
        Assert.True(File.Exists(whole) && !File.Exists(hit) && File.Exists(hit + ".torn"));
    }

    [Fact]
    public async Task Server_OnlyKeyTorn_OpensItsPagesAllTheSame()
    {
        using (ServerProcess first = await ServerProcess.StartAsync(_folder.FullName))
            await first.NewBrowser(new System.Net.CookieContainer()).OpenAsync("/sign-in");
        foreach (string key in Directory.GetFiles(Path.Combine(_folder.FullName, "keys"), "*.xml"))
            await File.WriteAllTextAsync(key, "<?xml version=", TestContext.Current.CancellationToken);

        using ServerProcess again = await ServerProcess.StartAsync(_folder.FullName);
        Assert.Equal(System.Net.HttpStatusCode.OK, (await again.NewBrowser(new System.Net.CookieContainer()).OpenAsync("/sign-in")).Status);
    }
}
