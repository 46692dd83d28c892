using System.Text.Json;
using System.Xml.Linq;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>Every package that is restored, those that packages bring along too, may be passed on with the program.</summary>
public sealed class LicenseTests
{
    /// <summary>SPDX expressions.</summary>
    private static readonly HashSet<string> Permissive = new(StringComparer.Ordinal)
    {
        "MIT", "MIT-0", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "MS-PL OR Apache-2.0",
    };

    // Of what only runs the tests and is passed on to nobody.
    private static readonly HashSet<string> OfTests = new(StringComparer.Ordinal) { "MPL-2.0" };

    // Whose description names a file instead; each was read.
    private static readonly Dictionary<string, string> Read = new(StringComparer.Ordinal)
    {
        ["Quickenshtein"] = "MIT",
        ["CommandLineParser"] = "MIT",
        ["Microsoft.DotNet.PlatformAbstractions"] = "MIT",
        // Its description names an address only; the port is under the license of what it was ported from.
        ["zxcvbn-core"] = "MIT",
    };

    public static TheoryData<string> Projects => [.. ProjectFile.All.Select(p => p.Name)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void Package_OfAProject_HasAPermissiveLicense(string project)
    {
        string assets = Path.Combine(Path.GetDirectoryName(ProjectFile.All.Single(p => p.Name == project).Path)!, "obj", "project.assets.json");
        using JsonDocument restored = JsonDocument.Parse(File.ReadAllText(assets));
        string[] folders = [.. restored.RootElement.GetProperty("packageFolders").EnumerateObject().Select(f => f.Name)];
        string[] wrong = [.. restored.RootElement.GetProperty("libraries").EnumerateObject()
            .Where(l => l.Value.GetProperty("type").GetString() == "package" && !BringsNothing(restored.RootElement, l.Name))
            .Select(l => (Id: l.Name.Split('/')[0], License: License(folders, l.Value.GetProperty("path").GetString()!)))
            .Where(p => !(OfTests.Contains(p.License) && project.EndsWith(".Tests", StringComparison.Ordinal)))
            .Where(p => !Permissive.Contains(p.License)
                && !((p.License is "" or "none") && Read.TryGetValue(p.Id, out string? read) && Permissive.Contains(read)))
            .Select(p => $"{p.Id}: “{p.License}”")];
        Assert.Empty(wrong);
    }

    /// <summary>What the registry said at the restore stands in what the restore wrote; where it did not answer (NU1900) nothing is known.</summary>
    [Theory]
    [MemberData(nameof(Projects))]
    public void Package_OfAProject_IsNotKnownToBeUnsafe(string project)
    {
        string assets = Path.Combine(Path.GetDirectoryName(ProjectFile.All.Single(p => p.Name == project).Path)!, "obj", "project.assets.json");
        using JsonDocument restored = JsonDocument.Parse(File.ReadAllText(assets));
        Assert.Empty(KnownUnsafe(restored.RootElement));
    }

    // The form is from memory: where this was written the registry keeps no list of weaknesses, and no restore spoke of one.
    [Theory]
    [InlineData("NU1903", true), InlineData("NU1901", true), InlineData("NU1900", false), InlineData("NU1603", false)]
    public void KnownUnsafe_AsARestoreWritesIt_IsFound(string code, bool isUnsafe)
    {
        const string message = "Package 'Newtonsoft.Json' 12.0.3 has a known high severity vulnerability";
        using JsonDocument restored = JsonDocument.Parse($$"""{"logs": [{"code": "{{code}}", "level": "Warning", "message": "{{message}}"}]}""");
        Assert.Equal(isUnsafe, KnownUnsafe(restored.RootElement).Length == 1);
        using JsonDocument clean = JsonDocument.Parse("{}");
        Assert.Empty(KnownUnsafe(clean.RootElement));
    }

    // NuGet's codes of a package with a known weakness: low, moderate, high, critical.
    private static string[] KnownUnsafe(JsonElement restored) => restored.TryGetProperty("logs", out JsonElement logs)
        ? [.. logs.EnumerateArray().Where(l => l.GetProperty("code").GetString() is "NU1901" or "NU1902" or "NU1903" or "NU1904")
            .Select(l => l.GetProperty("message").GetString()!)]
        : [];

    // No file of it stands in what is built: it only names others.
    private static bool BringsNothing(JsonElement restored, string package) =>
        restored.GetProperty("targets").EnumerateObject().Select(t => t.Value).All(t =>
            !t.TryGetProperty(package, out JsonElement brought)
            || brought.EnumerateObject().Where(a => a.Value.ValueKind == JsonValueKind.Object && a.Name != "dependencies")
                .SelectMany(a => a.Value.EnumerateObject()).All(f => f.Name.EndsWith("/_._", StringComparison.Ordinal)));

    // Empty where the description names a file.
    private static string License(string[] folders, string path)
    {
        string description = folders.Select(f => Path.Combine(f, path)).Where(Directory.Exists).SelectMany(d => Directory.GetFiles(d, "*.nuspec")).First();
        XElement? license = XDocument.Load(description).Descendants().FirstOrDefault(e => e.Name.LocalName == "license");
        return license is null ? "none" : (string?)license.Attribute("type") == "expression" ? license.Value.Trim() : "";
    }
}
