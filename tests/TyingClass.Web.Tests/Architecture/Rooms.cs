namespace TyingClass.Web.Tests.Architecture;

/// <param name="Uses">Projects it may refer to, without "TyingClass."; each stands further up in the list.</param>
/// <param name="Packages">Every package its project file names.</param>
internal sealed record Room(string Name, string Uses, string Packages)
{
    public string[] UsedNames { get; } = [.. Uses.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(u => "TyingClass." + u)];

    public string[] PackageNames { get; } = Packages.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    public bool IsProgram { get; } = !Name.EndsWith(".Tests", StringComparison.Ordinal) && Name != "TyingClass.Benchmarks";
}

/// <summary>
/// Which project may use which, and which package. A new project or package is a line here, a row in DEVELOPERS.md and one in docs/dependencies.md.
/// </summary>
internal static class Rooms
{
    public const string File = "tests/TyingClass.Web.Tests/Architecture/Rooms.cs";

    private const string Xunit = "Microsoft.NET.Test.Sdk xunit.v3.mtp-off xunit.runner.visualstudio ";

    public static Room[] All { get; } =
    [
        new("TyingClass.Balance", "", ""),
        new("TyingClass.Recipes", "Balance", "Fractions MathNet.Numerics Quickenshtein UnitsNet YamlDotNet"),
        new("TyingClass.Telling", "Balance Recipes", "Humanizer.Core"),
        new("TyingClass.Drawing", "Balance Recipes Telling", ""),
        new("TyingClass.Lessons", "Balance Recipes Telling", "AngleSharp HtmlSanitizer Markdig Superpower"),
        new("TyingClass.Storage", "Balance Recipes Telling Lessons", "LiteDB SkiaSharp SkiaSharp.NativeAssets.Linux.NoDependencies"),
        new("TyingClass.Web", "Balance Recipes Telling Drawing Lessons Storage", "CsvHelper NodaTime QRCoder zxcvbn-core"),
        new("TyingClass.CommandLine", "Balance Recipes Telling Drawing Lessons Storage", "System.CommandLine"),
        new("TyingClass.Balance.Tests", "Balance Recipes", Xunit + "CsCheck MathNet.Numerics"),
        new("TyingClass.Recipes.Tests", "Balance Recipes", Xunit + "CsCheck"),
        new("TyingClass.Telling.Tests", "Balance Recipes Telling", Xunit),
        new("TyingClass.Drawing.Tests", "Balance Recipes Telling Drawing", Xunit + "CsCheck"),
        new("TyingClass.Lessons.Tests", "Balance Recipes Telling Lessons", Xunit + "CsCheck Microsoft.Extensions.TimeProvider.Testing"),
        new("TyingClass.Storage.Tests", "Balance Recipes Telling Lessons Storage", Xunit + "Microsoft.Extensions.TimeProvider.Testing"),
        new("TyingClass.CommandLine.Tests", "Balance Recipes Telling Drawing Lessons Storage CommandLine", Xunit),
        new("TyingClass.Web.Tests", "Balance Recipes Telling Drawing Lessons Storage Web CommandLine",
            Xunit + "AngleSharp CsCheck Microsoft.AspNetCore.Mvc.Testing Microsoft.Extensions.TimeProvider.Testing ZXing.Net"),
        new("TyingClass.Browser.Tests", "Balance Recipes Telling Drawing Lessons Storage Web", Xunit + "Deque.AxeCore.Commons Microsoft.Playwright"),
        new("TyingClass.Benchmarks", "Balance Recipes Telling Drawing Lessons Storage Web", "BenchmarkDotNet MathNet.Numerics"),
    ];
}
