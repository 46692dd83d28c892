using System.Xml.Linq;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>What a project file of this repository says.</summary>
internal sealed record ProjectFile(string Path, string Name, string[] Uses, string[] Packages)
{
    public static string Root { get; } = FindRoot();

    public static ProjectFile[] All { get; } =
    [
        .. new[] { "src", "tests" }.SelectMany(f => Directory.GetFiles(System.IO.Path.Combine(Root, f), "*.csproj", SearchOption.AllDirectories))
            .Order(StringComparer.Ordinal).Select(Read),
    ];

    public static string ReadText(string path) => System.IO.File.ReadAllText(System.IO.Path.Combine(Root, path));

    private static ProjectFile Read(string path)
    {
        XDocument project = XDocument.Load(path);
        string[] Includes(string element) => [.. project.Descendants(element).Select(e => (string)e.Attribute("Include")!)];
        return new(path, System.IO.Path.GetFileNameWithoutExtension(path),
            [.. Includes("ProjectReference").Select(r => System.IO.Path.GetFileNameWithoutExtension(r))], Includes("PackageReference"));
    }

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !System.IO.File.Exists(System.IO.Path.Combine(folder, "TyingClass.sln"))) folder = System.IO.Path.GetDirectoryName(folder);
        return folder ?? throw new DirectoryNotFoundException("TyingClass.sln is above none of the test's folders.");
    }
}
