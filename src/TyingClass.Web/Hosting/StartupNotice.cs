using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Web.Network;

namespace TyingClass.Web.Hosting;

/// <summary>Tells whoever started the server where it is, and the instructor's one-time code while there is need of one.</summary>
internal sealed class StartupNotice(IServer server, RoomDoor door, IHostApplicationLifetime lifetime, ClassStore store, ProgramFolders folders, bool newCode)
    : IHostedService
{
    /// <summary>Set before the start: once it listens, the browser is shown where.</summary>
    public bool OpensBrowser { get; set; }

    public Task StartAsync(CancellationToken cancellationToken)
    {
        string? code = newCode || store.Instructors.Find() is null ? store.Instructors.NewCode() : null;
        lifetime.ApplicationStarted.Register(() => _ = PrintAsync(code));
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    private async Task PrintAsync(string? code)
    {
        string[] own = [.. server.Features.Get<IServerAddressesFeature>()?.Addresses ?? []];
        RoomState room = await OpenRoomAsync();
        foreach (string address in own) Console.WriteLine($"TyingClass is open at {address}");
        if (own is [var first, ..]) RunningAddress.Note(folders.Data, BrowserStart.Here(first));
        Console.WriteLine(Room(room));
        if (store.Upgraded is { } upgraded)
            Console.WriteLine($"The data file was upgraded from format {upgraded.From} to {upgraded.To}. As it was before: {upgraded.BackupPath}");
        Console.WriteLine($"Data: {folders.Data.Path}");
        Console.WriteLine($"Lessons: {folders.LessonsPath}");
        if (code is not null)
        {
            Console.WriteLine();
            Console.WriteLine($"The instructor's one-time code: {code}");
            Console.WriteLine("Open /sign-in?code=new and type it there, to choose a passphrase. It works once; until then each start prints a new one.");
        }

        if (store.IsInvented) DemoStart.Print();
        Console.WriteLine(OpensBrowser ? "Stop with Ctrl+C, or close this window." : "Stop with Ctrl+C.");
        if (OpensBrowser && own is [var here, ..]) BrowserStart.Open(BrowserStart.Here(here) + (code is null ? "/" : "/sign-in?code=new"));
    }

    private async Task<RoomState> OpenRoomAsync()
    {
        try
        {
            return await door.ApplyAsync();
        }
        catch (StorageException e)
        {
            // The choice could not be read; the address and the code must be printed all the same.
            return RoomState.Closed with { Trouble = e.Message };
        }
    }

    private static string Room(RoomState room) => room switch
    {
        { Root: { } root, Note: { } note } => $"In the room, for phones: {root}\n{note}",
        { Root: { } root } => $"In the room, for phones: {root}",
        { Trouble: { } trouble } => $"Phones cannot reach it: {trouble}",
        _ => "Phones cannot reach it: only this machine can. To open it to the room, see Setup in the program, or start it with --room.",
    };
}
