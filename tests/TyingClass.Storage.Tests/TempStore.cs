using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Tests;

/// <summary>A real store in a folder of its own, gone afterward.</summary>
internal sealed class TempStore : IDisposable
{
    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("tying-class-store-");

    public TempStore()
    {
        Folder = DataFolder.At(Path.Combine(_directory.FullName, "data"));
        Store = new ClassStore(Folder, Clock);
    }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 1, 14, 19, 30, 0, TimeSpan.Zero));

    public DataFolder Folder { get; }

    public ClassStore Store { get; private set; }

    public string PathBeside(string name) => Path.Combine(_directory.FullName, name);

    public void Reopen()
    {
        Store.Dispose();
        Store = new ClassStore(Folder, Clock);
    }

    public void Dispose()
    {
        Store.Dispose();
        _directory.Delete(recursive: true);
    }
}
