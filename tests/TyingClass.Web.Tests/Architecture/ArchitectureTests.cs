using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>Every project and every package has its place (docs/architecture.md). What is used is read off the built assemblies, what is referred to off the project files.</summary>
public sealed class ArchitectureTests
{
    private static readonly string[] Framework = ["System.", "Microsoft.AspNetCore", "Microsoft.Extensions.", "Microsoft.Win32.", "netstandard"];

    public static TheoryData<string> Programs => [.. ProjectFile.All.Select(p => p.Name).Where(n => Rooms.All.Any(r => r.Name == n && r.IsProgram))];

    public static TheoryData<string> Projects => [.. ProjectFile.All.Select(p => p.Name)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void Project_OfTheRepository_HasItsLine(string name)
    {
        ProjectFile project = Project(name);
        string line = $"new(\"{name}\", \"{string.Join(' ', project.Uses.Select(u => u.Replace("TyingClass.", "")))}\", \"{string.Join(' ', project.Packages.Order())}\"),";

        Assert.True(Rooms.All.Any(r => r.Name == name), $"{name} has no line in {Rooms.File}. If what it uses is meant, write below the projects that it uses: {line}");
        Assert.True(ProjectFile.ReadText("TyingClass.sln").Contains($"\"{name}\"", StringComparison.Ordinal), $"{name} is not in TyingClass.sln. Run: dotnet sln add {project.Path}");
        Assert.True(File.Exists(Path.Combine(Path.GetDirectoryName(project.Path)!, "packages.lock.json")), $"{name} has no packages.lock.json: run dotnet restore and commit it.");
    }

    [Fact]
    public void Line_OfEveryRoom_UsesOnlyRoomsAboveIt()
    {
        string[] names = [.. Rooms.All.Select(r => r.Name)];
        Assert.Equal(names.Distinct(), names);
        Assert.All(Rooms.All, room => Assert.Empty(room.UsedNames.Except(names[..Array.IndexOf(names, room.Name)])));
        Assert.Empty(names.Except(ProjectFile.All.Select(p => p.Name)));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Project_RefersTo_WhatItsLineSays(string name)
    {
        Room room = Line(name);
        ProjectFile project = Project(name);

        Assert.True(!project.Uses.Except(room.UsedNames).Any(), $"{name} refers to {string.Join(", ", project.Uses.Except(room.UsedNames))}, which its line in {Rooms.File} does not allow.");
        Assert.True(room.PackageNames.ToHashSet().SetEquals(project.Packages),
            $"{name} refers to {string.Join(' ', project.Packages.Order())}; its line in {Rooms.File} says {string.Join(' ', room.PackageNames.Order())}. Make them agree.");
    }

    // A package that comes along with another project is not this project's to use: so all that a built assembly names is looked at.
    [Theory]
    [MemberData(nameof(Programs))]
    public void Assembly_Names_OnlyWhatItsLineSays(string name)
    {
        Room room = Line(name);
        string[] named = [.. References(name).Where(r => !IsFramework(r))];

        Assert.Empty(named.Except(room.UsedNames).Except(room.PackageNames.Select(AssemblyOf)));
    }

    [Theory]
    [MemberData(nameof(Programs))]
    public void Package_OfAProgram_IsUsedByALine(string name) =>
        // Native code is loaded when the program runs: nothing to see in an assembly.
        Assert.Empty(Line(name).PackageNames.Where(p => !p.Contains(".NativeAssets.", StringComparison.Ordinal)).Select(AssemblyOf).Except(References(name)));

    [Fact]
    public void Balance_References_NoPackage() => Assert.All(References("TyingClass.Balance"), r => Assert.StartsWith("System.", r, StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Programs))]
    public void WebFramework_IsNamed_OnlyByWeb(string name) =>
        Assert.Equal(name == "TyingClass.Web", References(name).Any(r => r.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal)));

    [Fact]
    public void Package_Pinned_IsReferredToAndHasItsRow()
    {
        string[] pinned = [.. new[] { "src", "tests" }.SelectMany(f =>
            XDocument.Load(Path.Combine(ProjectFile.Root, f, "Directory.Packages.props")).Descendants("PackageVersion").Select(p => (string)p.Attribute("Include")!))];
        string[] used = [.. ProjectFile.All.SelectMany(p => p.Packages).Distinct().Order()];
        string[] rows = [.. Regex.Matches(ProjectFile.ReadText("docs/dependencies.md"), @"^\| `([^`]+)` \|", RegexOptions.Multiline).Select(m => m.Groups[1].Value).Order()];

        Assert.Equal(["AngleSharp.Css"], pinned.Except(used));
        Assert.Equal(used, rows);
    }

    [Theory]
    [MemberData(nameof(Programs))]
    public void Project_OfTheProgram_StandsInTheContributorsGuide(string name)
    {
        Match row = Regex.Match(ProjectFile.ReadText("DEVELOPERS.md"), $@"^\| `{Regex.Escape(name)}` \|[^|]+\|(?<uses>[^|]*)\|", RegexOptions.Multiline);

        Assert.True(row.Success, $"DEVELOPERS.md, “What depends on what”, has no row for {name}.");
        Assert.All(Line(name).PackageNames.Where(p => !p.Contains(".NativeAssets.", StringComparison.Ordinal)),
            p => Assert.Contains(p, row.Groups["uses"].Value.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries)));
    }

    private static ProjectFile Project(string name) => ProjectFile.All.Single(p => p.Name == name);

    private static Room Line(string name) => Assert.Single(Rooms.All, r => r.Name == name);

    // The rest are named by their assemblies.
    private static string AssemblyOf(string package) => package == "Humanizer.Core" ? "Humanizer" : package;

    private static bool IsFramework(string assembly) =>
        assembly != "System.CommandLine" && Framework.Any(f => assembly.StartsWith(f, StringComparison.Ordinal));

    private static IEnumerable<string> References(string assembly) =>
        Assembly.Load(assembly).GetReferencedAssemblies().Select(r => r.Name ?? "");
}
