using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.Files;

namespace TyingClass.Web.Hosting;

/// <summary>Puts the application together; Program only runs it.</summary>
public static class Server
{
    public const int DefaultPort = 5080;

    public const string DefaultAddress = "http://localhost:5080";

    /// <summary>Starts no listening yet, but opens the data folder: a second server on the same one is refused here.</summary>
    /// <exception cref="StorageException">The data folder cannot be used.</exception>
    /// <exception cref="AlreadyRunningException">It is in use by a server that said where it is.</exception>
    /// <exception cref="LessonsNotFoundException">No lessons folder.</exception>
    /// <exception cref="StartRefusedException">Something else asked for cannot be done.</exception>
    public static WebApplication Build(string[] args)
    {
        StartFlags flags = StartFlags.Read(args);
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = flags.Others,
            ContentRootPath = ProjectFolder.Find(),
            // Not the entry assembly: in the browser tests that is the test host, and no page would be found.
            ApplicationName = typeof(Server).Assembly.GetName().Name,
        });
        OwnEnvironment.Only(builder.Configuration);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Security.BodyLimit.MostBytes;
        });
        Logs.Configure(builder.Logging);
        ProgramFolders folders = ProgramFolders.From(builder.Configuration, builder.Environment.ContentRootPath);
        NetworkServices.Add(builder, flags);
        Services.Add(builder.Services, folders, flags);

        WebApplication app = builder.Build();
        if (LooksCheck.Complaint(app.Environment.WebRootFileProvider) is { } complaint) Console.Error.WriteLine(complaint);
        // Reading the lessons takes longest; it need not wait for the data.
        _ = Task.Run(app.Services.GetRequiredService<ICourseSource>);
        // Opened now, so that a folder in use stops the start instead of the first visitor.
        ClassStore store = Open(app, folders);
        if (flags.Demo) DemoStart.Fill(store, app.Services);
        Pipeline.Use(app);
        if (BrowserStart.IsWanted(args)) app.Services.GetRequiredService<StartupNotice>().OpensBrowser = true;
        return app;
    }

    private static ClassStore Open(WebApplication app, ProgramFolders folders)
    {
        try
        {
            return app.Services.GetRequiredService<ClassStore>();
        }
        catch (StorageException e) when (e.FolderInUse && RunningAddress.Find(folders.Data) is { } address)
        {
            throw new AlreadyRunningException(address, e);
        }
    }
}
