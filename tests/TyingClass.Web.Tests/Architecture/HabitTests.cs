using System.Reflection;
using TyingClass.Storage;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>Habits of the house that the compiler does not keep: docs/architecture.md says why.</summary>
public sealed class HabitTests
{
    private const int MostParameters = 6;

    /// <summary>Methods from before the rule. None may be added, and one that is mended must be taken out.</summary>
    private static readonly string[] TooManyParameters =
    [
    ];

    /// <summary>Pages and desks that still ask for the whole data file. None may be added, and one that is mended must be taken out.</summary>
    private static readonly string[] WholeStore =
    [
    ];

    /// <summary>Names with two meanings. None may be added, and one that is mended must be taken out.</summary>
    private static readonly string[] TwoMeanings = [];

    // A record of data has as many as its data; whoever calls a method must keep its parameters apart.
    [Fact]
    public void Method_OfTheProgram_TakesAtMostSixParameters() =>
        Assert.Equal(TooManyParameters.Order(StringComparer.Ordinal), Assemblies.Methods.Where(m => m.GetParameters().Length > MostParameters).Select(Name).Distinct().Order(StringComparer.Ordinal));

    // Page models are named by their pages, and a type inside another by both.
    [Fact]
    public void Name_OfAType_MeansOneThing() =>
        Assert.Equal(TwoMeanings, Assemblies.Types.Where(t => !t.IsNested && !Assemblies.IsPageModel(t)).GroupBy(t => t.Name).Where(g => g.Count() > 1).Select(g => g.Key).Order(StringComparer.Ordinal));

    [Fact]
    public void PageOrDesk_OfTheWeb_AsksForTheStoresItUses() =>
        Assert.Equal(WholeStore.Order(StringComparer.Ordinal), Assemblies.Types
            .Where(t => t.Assembly.GetName().Name == "TyingClass.Web" && t.Namespace is not ("TyingClass.Web.Hosting" or "TyingClass.Web.Demo"))
            .Where(t => t.GetConstructors().Any(c => c.GetParameters().Any(p => p.ParameterType == typeof(ClassStore))))
            .Select(t => t.FullName!).Order(StringComparer.Ordinal));

    private static string Name(MethodBase method) => $"{method.DeclaringType!.FullName}.{(method.IsConstructor ? "new" : method.Name)}";
}
