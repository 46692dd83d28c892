using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.People;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Browser.Tests;

/// <summary>The whole application on a port of its own, with the repository's lessons and an empty data folder.</summary>
public sealed class RunningApp : IAsyncLifetime
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("tyingclass-browser");
    private WebApplication? _app;

    public string Address { get; private set; } = "";

    public Course Course => App.Services.GetRequiredService<ICourseSource>().Current;

    private WebApplication App => _app ?? throw new InvalidOperationException("The application is not running yet.");

    public ClassStore Store => App.Services.GetRequiredService<ClassStore>();

    /// <summary>Lets in a further instructor with a class of their own: stories share the server, in any order, and none may meet another's students.</summary>
    public string NewInstructorCode() => Store.Instructors.Invite();

    public string Hash(string passphrase) => App.Services.GetRequiredService<IPasswordHasher<Person>>().HashPassword(null!, passphrase);

    public async ValueTask InitializeAsync()
    {
        _app = Server.Build(["--data", _data.FullName, "--urls", "http://127.0.0.1:0"]);
        await _app.StartAsync();
        // The code from the console makes the first instructor and afterward only gives that one a new passphrase.
        Assert.NotNull(Store.Instructors.Claim(Store.Instructors.NewCode(), "First instructor", "none"));
        Address = _app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();
    }

    public async ValueTask DisposeAsync()
    {
        if (_app is not null)
        {
            await _app.DisposeAsync();
        }

        _data.Delete(recursive: true);
    }
}
