using TyingClass.Storage.Files;
using TyingClass.Web.Hosting;
using TyingClass.Web.Network;

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
catch (Exception e) when (ListenAddresses.WhyNot(e) is not null)
{
    return await RefuseAsync(ListenAddresses.WhyNot(e)!);
}

async Task<int> RefuseAsync(string message)
{
    Console.Error.WriteLine(message);
    if (BrowserStart.IsWanted(args)) await RefusalPage.ShowAsync(message);
    return 1;
}
