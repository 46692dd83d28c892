using TyingClass.Storage.Files;
using TyingClass.Web.Hosting;

try
{
    WebApplication app = Server.Build(args);
    await app.RunAsync();
    return 0;
}
catch (StorageException e)
{
    return Refuse(e.Message);
}
catch (LessonsNotFoundException e)
{
    return Refuse(e.Message);
}
catch (StartRefusedException e)
{
    return Refuse(e.Message);
}
catch (IOException e) when (e.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException)
{
    return Refuse($"{e.Message} Another program has that address. Stop it, or choose another with --urls http://localhost:5081");
}

static int Refuse(string message)
{
    Console.Error.WriteLine(message);
    return 1;
}
