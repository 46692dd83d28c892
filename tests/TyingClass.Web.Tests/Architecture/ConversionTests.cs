using System.Text.RegularExpressions;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>Units are converted by UnitsNet, figures are told by Telling: nobody has a factor or a rounding of his own.</summary>
public sealed partial class ConversionTests
{
    // Fly lines are classed in grains, and the physics uses no package: the one place that states a factor, with its source.
    private const string LineWeights = "src/TyingClass.Balance/Casting/FlyLine.cs";

    public static TheoryData<string> Sources => [.. Directory.EnumerateFiles(Path.Combine(ProjectFile.Root, "src"), "*", SearchOption.AllDirectories)
        .Where(f => Path.GetExtension(f) is ".cs" or ".cshtml" or ".js")
        .Select(f => Path.GetRelativePath(ProjectFile.Root, f).Replace('\\', '/'))
        .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal))];

    [Fact]
    public void Source_OfThePrograms_HasNoFactorBetweenSystemsOfUnits()
    {
        string[] found = [.. Sources.Select(s => s.Data).SelectMany(Lines).Where(l => l.File != LineWeights && Factor().IsMatch(l.Code)).Select(l => $"{l.File}: {l.Code.Trim()}")];

        Assert.True(found.Length == 0, $"Convert with Units.ToSi and Units.FromSi, tell with a Magnitude or Stated: {string.Join(Environment.NewLine, found)}");
    }

    [Fact]
    public void Balance_Source_SaysNoSentenceAndNoUnitOfAReader()
    {
        string[] found = [.. Sources.Select(s => s.Data).Where(f => f.StartsWith("src/TyingClass.Balance/Reports/", StringComparison.Ordinal)).SelectMany(Lines)
            .Where(l => Interpolated().IsMatch(l.Code)).Select(l => $"{l.File}: {l.Code.Trim()}")];

        Assert.Empty(found);
    }

    [Fact]
    public void Sources_AreRead() => Assert.True(Sources.Count > 400, $"only {Sources.Count} sources found");

    private static IEnumerable<(string File, string Code)> Lines(string file) => File.ReadLines(Path.Combine(ProjectFile.Root, file))
        .Where(l => !l.TrimStart().StartsWith("//", StringComparison.Ordinal)).Select(l => (file, l));

    // Millimeters of an inch, meters of a foot, grams of a grain and of an ounce, grains of a gram.
    [GeneratedRegex(@"(?<![0-9.])(?:25\.4|304\.8|0\.3048|3\.28[0-9]*|0\.0647[0-9]*|64\.7[0-9]*|28\.349[0-9]*|15\.43[0-9]*)(?![0-9])")]
    private static partial Regex Factor();

    [GeneratedRegex("""\$"|ToString\("F""")]
    private static partial Regex Interpolated();
}
