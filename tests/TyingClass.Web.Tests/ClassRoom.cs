using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage;

namespace TyingClass.Web.Tests;

/// <summary>The real application with a data folder of its own and the small course beside these tests.</summary>
public sealed class ClassRoom : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("tying-class-web-");

    // A hundred servers in one process would use up the system's file watchers.
    static ClassRoom()
    {
        Environment.SetEnvironmentVariable("DOTNET_USE_POLLING_FILE_WATCHER", "1");
        Environment.SetEnvironmentVariable("DOTNET_hostBuilder__reloadConfigOnChange", "false");
    }

    public ClassRoom() => ClientOptions.AllowAutoRedirect = false;

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 1, 14, 19, 30, 0, TimeSpan.Zero));

    public ClassStore Store => Services.GetRequiredService<ClassStore>();

    /// <summary>A browser with its own cookies, and patience: a busy machine is no error of the server's.</summary>
    public Browser NewBrowser()
    {
        HttpClient client = CreateClient();
        client.Timeout = TimeSpan.FromMinutes(15);
        return new Browser(client);
    }

    /// <summary>A browser that has used a fresh one-time code and holds the register.</summary>
    public async Task<Browser> NewInstructorAsync(string passphrase = "four quiet winter trout")
    {
        Browser browser = NewBrowser();
        await (await Pages.SignInPage.OpenAsync(browser, withCode: true)).ClaimAsync(Store.Instructors.NewCode(), "Dipper", passphrase);
        return browser;
    }

    /// <summary>A browser whose visitor has joined the first instructor's class.</summary>
    public async Task<Browser> NewStudentAsync(string name, Browser? browser = null)
    {
        browser ??= NewBrowser();
        await (await Pages.JoinPage.OpenAsync(browser)).JoinAsync(Store.Classes.All()[0].Code, name);
        return browser;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("data", Path.Combine(_data.FullName, "data"));
        builder.UseSetting("lessons", Path.Combine(AppContext.BaseDirectory, "Course"));
        builder.ConfigureServices(services =>
        {
            services.Replace(ServiceDescriptor.Singleton<TimeProvider>(Clock));
            // A dozen servers printing their codes would drown the tests' own output; StartTests watches a real start.
            services.RemoveAll<IHostedService>();
        });
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && _data.Exists) _data.Delete(recursive: true);
    }
}
