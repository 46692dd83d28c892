using Microsoft.Extensions.Configuration;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

public sealed class ProgramFoldersTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-places-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void From_StrangersFolderNamedLessons_IsPassedOver()
    {
        Directory.CreateDirectory(Path.Combine(_folder.FullName, "a", "b"));
        Lessons("a");

        Assert.Contains("exercise-ids.txt", Assert.Throws<LessonsNotFoundException>(() => From("a", "b")).Message, StringComparison.Ordinal);

        string own = Lessons(".");
        File.WriteAllText(Path.Combine(own, "exercise-ids.txt"), "x-1");
        Assert.Equal(own, From("a", "b").LessonsPath);
    }

    private ProgramFolders From(params string[] at)
    {
        IConfiguration configuration = new ConfigurationBuilder().AddInMemoryCollection([new("data", Path.Combine(_folder.FullName, "data"))]).Build();
        return ProgramFolders.From(configuration, Path.Combine([_folder.FullName, .. at]));
    }

    private string Lessons(string at) => Directory.CreateDirectory(Path.GetFullPath(Path.Combine(_folder.FullName, at, "lessons"))).FullName;
}
