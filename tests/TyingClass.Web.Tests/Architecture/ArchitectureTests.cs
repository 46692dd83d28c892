using System.Reflection;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>References point one way (DEVELOPERS.md, "What depends on what"): read off the built assemblies, not the project files.</summary>
public sealed class ArchitectureTests
{
    [Theory]
    [InlineData("TyingClass.Balance", "")]
    [InlineData("TyingClass.Recipes", "TyingClass.Balance")]
    [InlineData("TyingClass.Drawing", "TyingClass.Balance TyingClass.Recipes")]
    [InlineData("TyingClass.Lessons", "TyingClass.Balance TyingClass.Recipes")]
    [InlineData("TyingClass.Storage", "TyingClass.Balance TyingClass.Recipes TyingClass.Lessons")]
    [InlineData("TyingClass.Web", "TyingClass.Balance TyingClass.Recipes TyingClass.Drawing TyingClass.Lessons TyingClass.Storage")]
    public void Assembly_OwnReferences_PointOneWay(string name, string allowed) =>
        Assert.Empty(References(name).Where(r => r.StartsWith("TyingClass.", StringComparison.Ordinal)).Except(allowed.Split(' ')));

    [Fact]
    public void Balance_References_NoPackage() =>
        Assert.All(References("TyingClass.Balance"), r => Assert.StartsWith("System.", r, StringComparison.Ordinal));

    [Theory]
    [InlineData("Markdig", "TyingClass.Lessons")]
    [InlineData("LiteDB", "TyingClass.Storage")]
    [InlineData("Microsoft.AspNetCore", "TyingClass.Web")]
    public void Package_IsReferenced_OnlyWhereItBelongs(string package, string owner)
    {
        string[] users = [.. Ours().Where(name => References(name).Any(r => r.StartsWith(package, StringComparison.Ordinal)))];

        Assert.Equal([owner], users);
    }

    private static IEnumerable<string> Ours() =>
        new[] { "Balance", "Recipes", "Drawing", "Lessons", "Storage", "Web" }.Select(n => "TyingClass." + n);

    private static IEnumerable<string> References(string assembly) =>
        Assembly.Load(assembly).GetReferencedAssemblies().Select(r => r.Name ?? "");
}
