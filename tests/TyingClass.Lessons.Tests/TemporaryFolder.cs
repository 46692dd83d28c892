namespace TyingClass.Lessons.Tests;

/// <summary>A lessons folder of its own, gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("lessons-").FullName;

    public void Write(string name, string text)
    {
        string path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    public void Delete(string name) => File.Delete(System.IO.Path.Combine(Path, name));

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
