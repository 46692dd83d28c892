using TyingClass.Storage;

namespace TyingClass.Web.Hosting;

/// <summary>Puts the application together; Program only runs it.</summary>
public static class Server
{
    public const string DefaultAddress = "http://localhost:5080";

    /// <summary>Starts no listening yet, but opens the data folder: a second server on the same one is refused here.</summary>
    /// <exception cref="Storage.Files.StorageException">The data folder cannot be used.</exception>
    /// <exception cref="LessonsNotFoundException">No lessons folder.</exception>
    public static WebApplication Build(string[] args)
    {
        (bool demo, string[] rest) = TakeFlag(args, DemoStart.Flag);
        (bool newCode, string[] others) = TakeFlag(rest, StartupNotice.NewCodeFlag);
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = others,
            ContentRootPath = ProjectFolder.Find(),
            // Not the entry assembly: in the browser tests that is the test host, and no page would be found.
            ApplicationName = typeof(Server).Assembly.GetName().Name,
        });
        if (string.IsNullOrWhiteSpace(builder.Configuration[WebHostDefaults.ServerUrlsKey])) builder.WebHost.UseUrls(DefaultAddress);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Security.BodyLimit.MostBytes;
        });
        Logs.Configure(builder.Logging);
        Places places = Places.From(builder.Configuration, builder.Environment.ContentRootPath);
        Services.Add(builder.Services, places, newCode);

        WebApplication app = builder.Build();
        // Opened now, so that a folder in use stops the start instead of the first visitor.
        ClassStore store = app.Services.GetRequiredService<ClassStore>();
        if (demo) DemoStart.Fill(store, app.Services);
        Pipeline.Use(app);
        return app;
    }

    private static (bool Found, string[] Others) TakeFlag(string[] args, string flag) =>
        (args.Contains(flag), [.. args.Where(a => a != flag)]);
}
