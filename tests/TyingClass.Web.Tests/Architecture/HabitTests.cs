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
        "TyingClass.Balance.Towing.Keel.Ledger",
        "TyingClass.Balance.Towing.Righting.TrySettle",
        "TyingClass.Balance.Towing.Settling.TryFinish",
        "TyingClass.Balance.Towing.SymmetricAttitude.Polish",
        "TyingClass.Drawing.Flies.HairArt.Draw",
        "TyingClass.Drawing.Flies.HairArt.Strokes",
        "TyingClass.Drawing.Plates.LineArt.Rule",
        "TyingClass.Drawing.Plates.Plate.Say",
        "TyingClass.Drawing.Plates.Strip.DrawScaleBar",
        "TyingClass.Recipes.Catalogue.Materials.Dressing",
        "TyingClass.Storage.Attempts.Attempt.Of",
        "TyingClass.Web.BenchLog.LogPages.new",
        "TyingClass.Web.Exchange.FilesDesk.new",
    ];

    /// <summary>Pages and desks that still ask for the whole data file. None may be added, and one that is mended must be taken out.</summary>
    private static readonly string[] WholeStore =
    [
        "TyingClass.Web.BenchLog.LogDesk",
        "TyingClass.Web.BenchLog.LogPages",
        "TyingClass.Web.Calendar.ClassCalendar",
        "TyingClass.Web.Classes.ClassAccess",
        "TyingClass.Web.Classes.ClassRegister",
        "TyingClass.Web.Classes.ClassSetup",
        "TyingClass.Web.Classes.PeopleDesk",
        "TyingClass.Web.Classes.StartDesk",
        "TyingClass.Web.Evenings.EveningBook",
        "TyingClass.Web.Evenings.RoomDesk",
        "TyingClass.Web.Exchange.BackupAnswers",
        "TyingClass.Web.Exchange.FilesDesk",
        "TyingClass.Web.Exchange.NamesDesk",
        "TyingClass.Web.Identity.AccountSignIn",
        "TyingClass.Web.Pages.Account.IndexModel",
        "TyingClass.Web.Pages.BenchLog.IndexModel",
        "TyingClass.Web.Pages.Class.CopyModel",
        "TyingClass.Web.Pages.Evenings.EveningModel",
        "TyingClass.Web.Pages.Evenings.IndexModel",
        "TyingClass.Web.Pages.SignIn.JoinModel",
        "TyingClass.Web.Patterns.PatternCards",
        "TyingClass.Web.Patterns.PatternSources",
        "TyingClass.Web.Practice.ConceptBoard",
        "TyingClass.Web.Practice.PracticeDesk",
        "TyingClass.Web.Reviews.ReviewDesk",
    ];

    /// <summary>Names with two meanings. None may be added, and one that is mended must be taken out.</summary>
    private static readonly string[] TwoMeanings = ["MeasureReader", "Places"];

    // A record of data has as many as its data; whoever calls a method must keep its parameters apart.
    [Fact]
    public void Method_OfTheProgram_TakesAtMostSixParameters() =>
        AssertList(TooManyParameters, Assemblies.Methods.Where(m => m.GetParameters().Length > MostParameters).Select(Name));

    // Page models are named by their pages, and a type inside another by both.
    [Fact]
    public void Name_OfAType_MeansOneThing() =>
        AssertList(TwoMeanings, Assemblies.Types.Where(t => !t.IsNested && !Assemblies.IsPageModel(t)).GroupBy(t => t.Name).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void PageOrDesk_OfTheWeb_AsksForTheStoresItUses() =>
        AssertList(WholeStore, Assemblies.Types
            .Where(t => t.Assembly.GetName().Name == "TyingClass.Web" && t.Namespace is not ("TyingClass.Web.Hosting" or "TyingClass.Web.Demo"))
            .Where(t => t.GetConstructors().Any(c => c.GetParameters().Any(p => p.ParameterType == typeof(ClassStore))))
            .Select(t => t.FullName!));

    // Both lists whole: whoever reads the failure copies from it.
    private static void AssertList(IEnumerable<string> known, IEnumerable<string> found)
    {
        string[] all = [.. found.Distinct().Order(StringComparer.Ordinal)];
        Assert.True(
            all.SequenceEqual(known.Order(StringComparer.Ordinal)),
            $"New: {string.Join(", ", all.Except(known))}. Mended, take it out of the list: {string.Join(", ", known.Except(all))}.");
    }

    private static string Name(MethodBase method) => $"{method.DeclaringType!.FullName}.{(method.IsConstructor ? "new" : method.Name)}";
}
