using TyingClass.Storage;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.CommandLine.Tests;

public sealed class BackupVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tyingclass");

    private DataFolder Data => DataFolder.At(In("data"));

    [Fact]
    public void Backup_StoppedServer_IsRestoredByRestoreAndTheOldIsKept()
    {
        using (ClassStore store = new(Data, TimeProvider.System))
        {
            store.People.AddGuest("Wren");
        }

        CommandRun backup = CommandRun.Of(_folder, "backup", "winter.zip", "--data", "data");
        Assert.Equal((0, ""), (backup.ExitCode, backup.Errors));
        Assert.Contains("1 people", backup.Output, StringComparison.Ordinal);
        using (ClassStore store = new(Data, TimeProvider.System))
        {
            store.People.AddGuest("Teal");
        }

        CommandRun restore = CommandRun.Of(_folder, "restore", "winter.zip", "--data", "data");

        Assert.Equal((0, ""), (restore.ExitCode, restore.Errors));
        Assert.Contains("before-restore-", restore.Output, StringComparison.Ordinal);
        using ClassStore restored = new(Data, TimeProvider.System);
        Assert.Equal(["Wren"], restored.People.All().Select(p => p.Name));
    }

    [Fact]
    public async Task Backup_RunningServer_IsMadeByTheServer()
    {
        using ClassStore store = new(Data, TimeProvider.System);
        store.People.AddGuest("Wren");
        using CancellationTokenSource enough = new();
        Task server = Task.Run(
            async () =>
            {
                while (!enough.IsCancellationRequested)
                {
                    BackupRequests.Answer(Data, store.Backup, DateTimeOffset.UtcNow, TimeSpan.FromMinutes(5));
                    await Task.Delay(100, CancellationToken.None);
                }
            },
            TestContext.Current.CancellationToken);

        CommandRun run = CommandRun.Of(_folder, "backup", "winter.zip", "--data", "data");

        await enough.CancelAsync();
        await server;
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.True(File.Exists(In("winter.zip")));
    }

    [Fact]
    public void Restore_DamagedFile_ExitsTwoAndChangesNothing()
    {
        using (ClassStore store = new(Data, TimeProvider.System))
        {
            store.People.AddGuest("Wren");
            store.Backup(In("winter.zip"));
        }

        byte[] bytes = File.ReadAllBytes(In("winter.zip"));
        File.WriteAllBytes(In("winter.zip"), bytes[..^200]);

        CommandRun run = CommandRun.Of(_folder, "restore", "winter.zip", "--data", "data");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Nothing was changed", run.Errors, StringComparison.Ordinal);
        using ClassStore after = new(Data, TimeProvider.System);
        Assert.Single(after.People.All());
    }

    [Fact]
    public void Backup_NoClassThere_ExitsTwoAndSaysWhereToLook()
    {
        CommandRun run = CommandRun.Of(_folder, "backup", "winter.zip", "--data", "nowhere");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--data DIR", run.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(In("nowhere")));
    }

    [Fact]
    public void Export_OfEveryClass_WritesThemWithTheSchema()
    {
        using (ClassStore store = new(Data, TimeProvider.System))
        {
            store.Instructors.Claim(store.Instructors.NewCode(), "Dipper", "hash", "Alder Bridge");
        }

        CommandRun run = CommandRun.Of(_folder, "export", "out", "--data", "data");

        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.True(File.Exists(In("out/class-export.schema.json")));
        Assert.Contains(
            "\"Alder Bridge\"", File.ReadAllText(
                Assert.Single(Directory.GetFiles(In("out"), "class-*.json"), f => !f.Contains("schema", StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private string In(string name) => Path.Combine(_folder.FullName, name);
}
