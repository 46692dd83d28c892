using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using TyingClass.Storage;

namespace TyingClass.Web.Hosting;

/// <summary>Tells whoever started the server where it is, and the instructor's one-time code while there is need of one.</summary>
internal sealed class StartupNotice(IServer server, IHostApplicationLifetime lifetime, ClassStore store, Places places, bool newCode) : IHostedService
{
    /// <summary>For an instructor who forgot the passphrase.</summary>
    public const string NewCodeFlag = "--new-instructor-code";

    public Task StartAsync(CancellationToken cancellationToken)
    {
        string? code = newCode || store.Instructors.Find() is null ? store.Instructors.NewCode() : null;
        lifetime.ApplicationStarted.Register(() => Print(code));
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    private void Print(string? code)
    {
        foreach (string address in server.Features.Get<IServerAddressesFeature>()?.Addresses ?? []) Console.WriteLine($"TyingClass is open at {address}");
        Console.WriteLine($"Data: {places.Data.Path}");
        Console.WriteLine($"Lessons: {places.LessonsPath}");
        if (code is not null)
        {
            Console.WriteLine();
            Console.WriteLine($"The instructor's one-time code: {code}");
            Console.WriteLine("Type it at /sign-in to choose a passphrase. It works once; until then each start prints a new one.");
        }

        if (store.IsInvented) DemoStart.Print();
        Console.WriteLine("Stop with Ctrl+C.");
    }
}
