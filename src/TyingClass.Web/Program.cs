using TyingClass.Storage.Files;
using TyingClass.Web.Hosting;

if (StartFlags.AsksForHelp(args))
{
    Console.WriteLine(StartFlags.Help);
    return 0;
}

try
{
    StartFlags.RefuseUnknown(args);
    WebApplication app = Server.Build(args);
    await app.RunAsync();
    return 0;
}
catch (AlreadyRunningException e) when (BrowserStart.IsWanted(args))
{
    // A second double click means: show it to me.
    Console.WriteLine(e.Message);
    BrowserStart.Open(e.Address);
    return 0;
}
catch (Exception e) when (e is StorageException or LessonsNotFoundException or StartRefusedException or AlreadyRunningException)
{
    return await RefuseAsync(e.Message);
}
catch (IOException e) when (e.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException)
{
    return await RefuseAsync($"{e.Message} Another program has that address. Stop it, or choose another with --urls http://localhost:5081");
}

async Task<int> RefuseAsync(string message)
{
    Console.Error.WriteLine(message);
    if (BrowserStart.IsWanted(args)) await RefusalPage.ShowAsync(message);
    return 1;
}
